package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;

/**
 * How much memory the inbox may still take up. Order files come from strangers: a small one can unpack to millions of
 * cells. The sizes are rough (from memory: a 64-bit machine) and
 * only need to be of the right order; a slot of a row costs more than its four bytes, as it costs time too.
 */
public final class Allowance {
    private static final int ROW_BYTES = 600;
    private static final int SLOT_BYTES = 16;
    private static final int CELL_BYTES = 80;
    private static final int MERGE_BYTES = 40;
    private static final int TEXT_BYTES = 200;

    private long left = Limits.INBOX_MEMORY_BYTES;

    /** What is left now, to come back to when a file is refused. */
    public long left() {
        return left;
    }

    public void backTo(long before) {
        left = before;
    }

    void keepRow(int slots) throws Unreadable {
        spend(ROW_BYTES + (long) SLOT_BYTES * slots);
    }

    /** Cells that are one over so many rows more: each of them is looked at. */
    void keepMerge(int rows) throws Unreadable {
        spend(MERGE_BYTES + (long) SLOT_BYTES * rows);
    }

    /** Texts that another library holds for us until the file is read. */
    void keepTexts(long count, long bytes) throws Unreadable {
        spend(TEXT_BYTES * count + 2 * bytes);
    }

    /** A cell that isn't one of another place again. */
    void keepCell(String text) throws Unreadable {
        spend(CELL_BYTES + 2L * text.length());
    }

    private void spend(long bytes) throws Unreadable {
        left -= bytes;
        if (left < 0) {
            throw Unreadable.of("inbox-too-large");
        }
    }
}
