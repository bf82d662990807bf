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
    /** What a TIFF, WebP or GIF unpacks to: it has to be held whole. */
    public static final long DECODED_BYTES = 128L << 20;
    /** Pixels of a WebP: unpacking some two megapixels takes a second of processor time. */
    public static final long WEBP_PIXELS = 24_000_000L;
    /** Stretches that the samples of a TIFF are parted into. */
    public static final int TIFF_STRETCHES = 1 << 17;
    /** A colour profile inside a picture. */
    public static final int PROFILE_BYTES = 4 << 20;
    /** An SVG, unpacked. */
    public static final int SVG_BYTES = 20 << 20;
    /** Elements of an SVG, and shapes that it draws. */
    public static final int SVG_ELEMENTS = 200_000;
    /** Groups inside groups of an SVG. */
    public static final int SVG_DEPTH = 60;
    /** Copies of copies in an SVG. */
    public static final int SVG_USE_DEPTH = 15;
    /** Parts of all filters of an SVG. */
    public static final int SVG_FILTERS = 200;
    /** A PDF that is artwork. */
    public static final long PDF_BYTES = 100L << 20;
    /** Dictionaries and arrays of one PDF page. */
    public static final int PDF_PARTS = 500_000;
    /** Operators of one PDF page, those of forms inside it as often as they are drawn. */
    public static final int PDF_OPERATORS = 600_000;
    /** Pixels of all pictures inside vector artwork. */
    public static final long INNER_PIXELS = 60_000_000L;
    /** Points of all shapes of vector artwork. */
    public static final int SHAPE_POINTS = 1_000_000;
    /** All lines of vector artwork, in sides of the artwork. */
    public static final int SHAPE_LENGTH = 50_000;
    /** Points of an outline that cuts off others; with more, the drawing becomes pixels on a cone. */
    public static final int CLIP_POINTS = 2_000;
    /** How long a drawing may take to show that it can be drawn. */
    public static final int VECTOR_SECONDS = 15;
    /** Folders inside folders of the artwork folder. */
    public static final int ARTWORK_DEPTH = 8;

    private Limits() {}
}
