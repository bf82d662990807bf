package bandwright.rules.orders;

import java.util.SortedMap;

/**
 * What a listing on a selling site means: a row of products.csv.
 *
 * @param variation every pair must stand in the row's variation cell
 * @param blank a sku or alias; empty = not drinkware
 * @param texts fixed texts of the design's fields
 * @param row its number in products.csv
 */
public record Product(
        String site,
        String product,
        SortedMap<String, String> variation,
        String blank,
        String design,
        int count,
        SortedMap<String, String> texts,
        String note,
        int row) {}
