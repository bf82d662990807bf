package bandwright.pipeline.intake;

import bandwright.pipeline.rows.Row;
import java.time.LocalDate;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A row that orders something, understood: its cells as values, nothing looked up yet.
 *
 * @param line the line's own number, or its place among the order's rows in its file
 * @param texts by field of the design, as ordered
 * @param heatSource the wish; empty = none
 */
public record OrderLine(
        Row row,
        String site,
        String order,
        String line,
        Optional<LocalDate> orderDate,
        Optional<LocalDate> shipBy,
        String sku,
        String design,
        int quantity,
        SortedMap<String, String> texts,
        String heatSource,
        boolean gift) {
    /** The same with another number of its line. */
    public OrderLine numbered(String number) {
        return new OrderLine(
                row, site, order, number, orderDate, shipBy, sku, design, quantity, texts, heatSource, gift);
    }
}
