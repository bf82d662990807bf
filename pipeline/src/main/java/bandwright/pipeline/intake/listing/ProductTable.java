package bandwright.pipeline.intake.listing;

import bandwright.pipeline.rows.Entities;
import bandwright.rules.orders.Product;
import bandwright.rules.orders.Sites;
import bandwright.rules.table.Names;
import bandwright.rules.table.Nearest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * products.csv as it is asked. Of the rows of a listing the one with the most conditions that all hold wins; a pair of
 * its variation is one condition, its site another.
 */
final class ProductTable {
    /** Nobody mistypes a longer name than that and wants to be asked about it. [J] */
    private static final int LONGEST_NAME = 120;

    private final Map<String, List<Group>> byProduct = new LinkedHashMap<>();
    private final Map<String, Optional<Group>> nearest = new HashMap<>();
    private final Sites sites;

    /** Rows with equal keys: together they are a set. */
    record Group(List<Product> rows) {
        Group {
            rows = List.copyOf(rows);
        }

        Product first() {
            return rows.get(0);
        }

        int conditions() {
            return first().variation().size() + (first().site().isBlank() ? 0 : 1);
        }

        private long held(Variation variation) {
            return first().variation().entrySet().stream()
                    .filter(pair -> variation.has(decoded(pair.getKey()), decoded(pair.getValue())))
                    .count();
        }

        private boolean isFor(String site) {
            return first().site().isBlank() || Names.same(first().site(), site);
        }
    }

    private record Key(String site, String product, Map<String, String> variation) {
        static Key of(Product product) {
            Map<String, String> pairs = new TreeMap<>();
            product.variation().forEach((key, value) -> pairs.put(name(key), name(value)));
            return new Key(Names.fold(product.site()), name(product.product()), pairs);
        }
    }

    ProductTable(List<Product> products, Sites sites) {
        this.sites = sites;
        byProduct.putAll(grouped(products));
    }

    private static Map<String, List<Group>> grouped(List<Product> products) {
        Map<Key, List<Product>> groups = new LinkedHashMap<>();
        products.forEach(product -> groups.computeIfAbsent(Key.of(product), any -> new ArrayList<>())
                .add(product));
        Map<String, List<Group>> byProduct = new LinkedHashMap<>();
        groups.forEach((key, rows) -> byProduct
                .computeIfAbsent(key.product(), any -> new ArrayList<>())
                .add(new Group(rows)));
        return byProduct;
    }

    /** The rows of each listing, those with equal keys together. */
    static List<List<Group>> byListing(List<Product> products) {
        return List.copyOf(grouped(products).values());
    }

    private static String decoded(String text) {
        return Entities.decode(text);
    }

    private static String name(String text) {
        return Names.fold(decoded(text));
    }

    /** The groups of that listing with the most conditions; more than one is a tie. */
    List<Group> best(Asked asked, String listing) {
        Variation variation = Variation.parse(decoded(asked.variation()));
        List<Group> fitting = byProduct.getOrDefault(name(listing), List.of()).stream()
                .filter(group -> group.isFor(asked.site())
                        && group.held(variation) == group.first().variation().size())
                .toList();
        int most = fitting.stream().mapToInt(Group::conditions).max().orElse(0);
        return fitting.stream().filter(group -> group.conditions() == most).toList();
    }

    /** That no row fits, with the row that comes nearest and the one to add. */
    ListingReason unknown(Asked asked) {
        Variation variation = Variation.parse(decoded(asked.variation()));
        List<Group> same = byProduct.getOrDefault(name(asked.product()), List.of());
        Optional<Group> near = same.isEmpty()
                ? nearest.computeIfAbsent(name(asked.product()), this::nearest)
                : same.stream()
                        .max(Comparator.<Group>comparingLong(group -> group.held(variation))
                                .thenComparing(group -> -group.first().row()));
        boolean isKnownSite =
                sites.list().stream().anyMatch(site -> !site.name().isBlank() && Names.same(site.name(), asked.site()));
        String row = NewRow.of(
                isKnownSite ? asked.site() : "", decoded(asked.product()), variation.asPairs(), asked.design());
        return new ListingReason.ProductUnknown(asked.product(), asked.variation(), near.map(Group::first), row);
    }

    private Optional<Group> nearest(String product) {
        if (product.length() > LONGEST_NAME) {
            return Optional.empty();
        }
        return Nearest.of(product, byProduct.keySet()).flatMap(name -> byProduct.getOrDefault(name, List.of()).stream()
                .findFirst());
    }
}
