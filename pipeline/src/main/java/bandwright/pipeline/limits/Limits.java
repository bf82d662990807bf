package bandwright.pipeline.limits;

/** What untrusted input may ask of this machine: order files and artwork come from strangers. */
public final class Limits {
    /** An order file as it lies on the disk. */
    public static final long ORDER_FILE_BYTES = 100L << 20;
    /** All that an order file unpacks to. */
    public static final long UNPACKED_BYTES = 200L * 1000 * 1000;
    /** What all order files of an inbox may take up in memory, roughly. */
    public static final long INBOX_MEMORY_BYTES = 400L << 20;
    /** Rows of one sheet, as ECMA-376 has them. */
    public static final int SHEET_ROWS = 1_048_576;
    /** Blank rows in a gap between filled ones that are counted as rows read. */
    public static final int BLANK_ROWS = 1_000;
    /** Columns of one sheet that are read. */
    public static final int SHEET_COLUMNS = 1_000;
    /** Characters of one cell, as spreadsheet programs have them. */
    public static final int CELL_CHARACTERS = 32_767;
    /** Sheets of one workbook. */
    public static final int SHEETS = 200;
    /** A picture as it lies on the disk. */
    public static final long PICTURE_BYTES = 500L << 20;
    /** Pixels of one picture. */
    public static final long PICTURE_PIXELS = 250_000_000L;
    /** Pixels along one side of a picture. */
    public static final int PICTURE_SIDE = 65_535;
    /** What an interlaced picture unpacks to: it has to be held whole. */
    public static final long INTERLACED_BYTES = 128L << 20;
    /** A colour profile inside a picture. */
    public static final int PROFILE_BYTES = 4 << 20;
    /** Folders inside folders of the artwork folder. */
    public static final int ARTWORK_DEPTH = 8;

    private Limits() {}
}
