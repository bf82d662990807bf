package bandwright.pipeline.artwork;

import java.awt.geom.AffineTransform;

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

    /**
     * From the unit square of the stored picture to the unit square of the shown one, y upwards as PDF has it: a point of
     * the stored picture goes where a person sees it.
     */
    public AffineTransform toShown() {
        return switch (this) {
            case TOP_LEFT -> new AffineTransform();
            case TOP_RIGHT -> new AffineTransform(-1, 0, 0, 1, 1, 0);
            case BOTTOM_RIGHT -> new AffineTransform(-1, 0, 0, -1, 1, 1);
            case BOTTOM_LEFT -> new AffineTransform(1, 0, 0, -1, 0, 1);
            case LEFT_TOP -> new AffineTransform(0, -1, -1, 0, 1, 1);
            case RIGHT_TOP -> new AffineTransform(0, -1, 1, 0, 0, 1);
            case RIGHT_BOTTOM -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case LEFT_BOTTOM -> new AffineTransform(0, 1, -1, 0, 1, 0);
        };
    }
}
