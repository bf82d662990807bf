package bandwright.pipeline.print;

/**
 * What became of a file of sheets at the printer, in one line.
 *
 * @param isAPersonNeeded whether somebody has to look, or to print it by hand
 */
public record Handed(String line, boolean isAPersonNeeded) {}
