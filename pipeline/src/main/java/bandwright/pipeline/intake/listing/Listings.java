package bandwright.pipeline.intake.listing;

import bandwright.pipeline.held.Outcome;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Blanks;
import bandwright.rules.orders.Product;
import bandwright.rules.table.Names;
import bandwright.rules.table.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What one copy of what a row orders consists of. A row that names a blank and a design orders those; else products.csv
 * says what its listing means: "Pair of terns" may be two mugs, a storm lamp and a coaster. A sku that names no blank is
 * looked up as a listing too, as selling sites join blank, design and size into one.
 */
public final class Listings {
    private final Blanks blanks;
    private final ProductTable table;

    public Listings(Rulebook rules) {
        this.blanks = rules.blanks();
        this.table = new ProductTable(rules.products(), rules.sites());
    }

    public Outcome<List<Item>> items(Asked asked) {
        boolean isBlank = blanks.find(asked.sku()).isPresent();
        if (isBlank && !isNothing(asked.design())) {
            return Outcome.made(List.of(Item.own(asked.sku(), asked.design())));
        }
        List<ProductTable.Group> best = isBlank ? List.of() : table.best(asked, asked.sku());
        if (best.isEmpty()) {
            best = table.best(asked, asked.product());
        }
        if (best.size() > 1) {
            return Outcome.held(ListingReason.ProductTie.of(
                    asked.product(),
                    best.get(0).rows().get(0).row(),
                    best.get(1).rows().get(0).row()));
        }
        if (best.size() == 1) {
            return Outcome.made(items(best.get(0).rows(), asked, isBlank));
        }
        return isLeftToProducts(asked, isBlank)
                ? Outcome.held(table.unknown(asked))
                : Outcome.made(List.of(Item.own(asked.sku(), asked.design())));
    }

    /** Whether only products.csv could say what the row orders; else its own cells are at fault, if anything is. */
    private boolean isLeftToProducts(Asked asked, boolean isBlank) {
        if (isBlank || isNothing(asked.product())) {
            return false;
        }
        return isNothing(asked.sku()) || (isNothing(asked.design()) && !isNearBlank(asked.sku()));
    }

    private boolean isNearBlank(String sku) {
        List<String> names = blanks.list().stream()
                .flatMap(blank -> Stream.concat(Stream.of(blank.sku()), blank.aliases().stream()))
                .toList();
        return Nearest.of(sku, names).isPresent();
    }

    /** What the row itself names goes before the listing's, but not where the listing has several of it. */
    private List<Item> items(List<Product> rows, Asked asked, boolean isBlank) {
        boolean hasOwnBlank = isBlank && areAlike(rows, product -> blank(product.blank()));
        boolean hasOwnDesign = !isNothing(asked.design()) && areAlike(rows, Product::design);
        List<Item> items = new ArrayList<>();
        for (Product product : rows) {
            items.add(new Item(
                    hasOwnBlank ? asked.sku() : product.blank(),
                    hasOwnDesign ? asked.design() : product.design(),
                    product.count(),
                    product.texts(),
                    product.row(),
                    hasOwnBlank || !isNothing(product.blank())));
        }
        return items;
    }

    private String blank(String name) {
        Optional<Blank> blank = blanks.find(name);
        return blank.map(Blank::sku).orElse(name);
    }

    private static boolean areAlike(List<Product> rows, Function<Product, String> cell) {
        return rows.stream().map(cell.andThen(Names::fold)).distinct().count() == 1;
    }

    private static boolean isNothing(String cell) {
        return Names.fold(cell).isEmpty();
    }
}
