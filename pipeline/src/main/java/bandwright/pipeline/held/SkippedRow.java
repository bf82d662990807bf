package bandwright.pipeline.held;

import bandwright.pipeline.rows.Row;

/**
 * Pieces of a row that are rightly not made.
 *
 * @param code cancelled, already-made, not-drinkware
 * @param message why, in one line
 */
public record SkippedRow(Row row, String order, int pieces, String code, String message) {}
