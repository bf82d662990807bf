package bandwright.pipeline.artwork;

/**
 * How stored pixels are turned to be seen upright: tag 274 of TIFF 6.0, as Exif (JEITA CP-3451) uses it. The names say
 * where the stored first row and first column are seen.
 */
public enum Orientation {
    TOP_LEFT,
    TOP_RIGHT,
    BOTTOM_RIGHT,
    BOTTOM_LEFT,
    LEFT_TOP,
    RIGHT_TOP,
    RIGHT_BOTTOM,
    LEFT_BOTTOM;

    /** The tag's value, 1 to 8; any other is upright. */
    public static Orientation ofTag(int tag) {
        return tag < 1 || tag > 8 ? TOP_LEFT : values()[tag - 1];
    }

    /** Whether stored rows are seen as columns. */
    public boolean swapsSides() {
        return compareTo(LEFT_TOP) >= 0;
    }
}
