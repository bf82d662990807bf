package bandwright.pipeline.intake.listing;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One thing of what a row orders: two mugs with a heron. A set is several of them.
 *
 * @param sku a blank's sku or alias, as the row or products.csv names it
 * @param count how many of it one copy holds
 * @param texts of the design's fields, fixed by the listing
 * @param productRow the row of products.csv that says so; 0 = the order's own row
 * @param isDrinkware whether there is anything to print
 */
public record Item(
        String sku, String design, int count, SortedMap<String, String> texts, int productRow, boolean isDrinkware) {
    public Item {
        texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
        if (count < 1) {
            throw new IllegalArgumentException("nothing of " + sku);
        }
    }

    /** What a row names itself. */
    public static Item own(String sku, String design) {
        return new Item(sku, design, 1, new TreeMap<>(), 0, true);
    }
}
