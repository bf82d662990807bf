package bandwright.pipeline.owed;

import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.rows.Row;

/**
 * A piece that was printed and is no longer wanted as it is: it must not go on.
 *
 * @param row what says so
 * @param wanted what is wanted now, in words
 */
public record Stop(PastPiece printed, Row row, String wanted) {}
