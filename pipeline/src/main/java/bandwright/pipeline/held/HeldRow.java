package bandwright.pipeline.held;

import bandwright.pipeline.rows.Row;

/**
 * Pieces of a row that are set aside, with the reason.
 *
 * @param order the order's number; empty where the row has none
 * @param pieces how many pieces of the row wait for it; 0 where the quantity itself is unclear
 */
public record HeldRow(Row row, String order, int pieces, Reason reason) {
    /** The header over the faulty cell, as the row's own file writes it. */
    public String column() {
        return row.headerOf(reason.field()).orElse(reason.field().name());
    }
}
