package bandwright.pipeline.intake.listing;

import bandwright.pipeline.intake.listing.ProductTable.Group;
import bandwright.rules.orders.Product;
import bandwright.rules.table.Names;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Rows of products.csv that some order would fit equally well: of one listing, with as many conditions, none of which
 * contradicts another. A row {@code Size=15 oz} and a row {@code Handle=Pink} tie for a pink mug of 15 oz, unless a third
 * row names both.
 */
public final class ProductTies {
    private ProductTies() {}

    /** Two rows that tie; of a set its first row. */
    public record Tie(Product one, Product other) {}

    /** All of them, in the order of the table. */
    public static List<Tie> of(List<Product> products) {
        List<Tie> ties = new ArrayList<>();
        for (List<Group> groups : ProductTable.byListing(products)) {
            for (int i = 0; i < groups.size(); i++) {
                for (int j = i + 1; j < groups.size(); j++) {
                    if (isTie(groups.get(i), groups.get(j), groups)) {
                        ties.add(new Tie(groups.get(i).first(), groups.get(j).first()));
                    }
                }
            }
        }
        return ties;
    }

    private static boolean isTie(Group one, Group other, List<Group> all) {
        return one.conditions() == other.conditions()
                && agree(one, other)
                && all.stream().noneMatch(third -> settles(third, one, other));
    }

    /** Whether one order can fit both. */
    private static boolean agree(Group one, Group other) {
        String here = one.first().site();
        String there = other.first().site();
        boolean isOneSite = here.isBlank() || there.isBlank() || Names.same(here, there);
        return isOneSite && one.first().variation().entrySet().stream().allMatch(pair -> allows(other, pair));
    }

    private static boolean allows(Group group, Map.Entry<String, String> pair) {
        return group.first().variation().entrySet().stream()
                .filter(own -> Names.same(own.getKey(), pair.getKey()))
                .allMatch(own -> Names.same(own.getValue(), pair.getValue()));
    }

    /** Whether a more specific row takes every order that fits both. */
    private static boolean settles(Group third, Group one, Group other) {
        boolean isForTheirSite = third.first().site().isBlank()
                || Names.same(third.first().site(), one.first().site())
                || Names.same(third.first().site(), other.first().site());
        return third.conditions() > one.conditions()
                && isForTheirSite
                && third.first().variation().entrySet().stream().allMatch(pair -> has(one, pair) || has(other, pair));
    }

    private static boolean has(Group group, Map.Entry<String, String> pair) {
        return group.first().variation().entrySet().stream()
                .anyMatch(
                        own -> Names.same(own.getKey(), pair.getKey()) && Names.same(own.getValue(), pair.getValue()));
    }
}
