package bandwright.pipeline.held;

import bandwright.pipeline.rows.Row;

/**
 * Pieces of a row that are rightly not made.
 *
 * @param code cancelled, already-made, not-drinkware
 * @param message why, in one line
 */
public record SkippedRow(Row row, String order, int pieces, String code, String message) {
    public static final String CANCELLED = "cancelled";
    public static final String ALREADY_MADE = "already-made";
    public static final String NOT_DRINKWARE = "not-drinkware";
}
