package bandwright.pipeline.intake.format;

/**
 * Cells of one column that a spreadsheet shows as one: A2:B4 is rows 2 to 4 of column 0, the others of its columns being
 * blank in every row.
 *
 * @param column counted from 0
 */
public record Merge(int firstRow, int lastRow, int column) {}
