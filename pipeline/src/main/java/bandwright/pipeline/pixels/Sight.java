package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.io.IOException;

/**
 * A picture as a person sees it, upright and in sRGB, with fewer pixels: every so-manieth of its own, none blended. A
 * picture of 2400 x 1000 pixels read at step 4 is a view of 600 x 250.
 */
public final class Sight {
    private final int width;
    private final int height;
    private final int[] argb;

    private Sight(int width, int height, int[] argb) {
        this.width = width;
        this.height = height;
        this.argb = argb;
    }

    /**
     * Reads a picture.
     *
     * @param step so many pixels each way become one
     */
    public static Sight read(ArtworkFile artwork, int step) throws IOException {
        StoredPixels stored = StoredPixels.sampled(artwork, step);
        int[] argb = ToSrgb.of(stored.colour()).converted(stored.argb());
        return upright(stored.width(), stored.height(), argb, artwork.orientation());
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** The pixel in that column and row, counted from the upper left: alpha, red, green, blue; not multiplied. */
    public int at(int x, int y) {
        return argb[y * width + x];
    }

    /** Whether nothing shows through. */
    public boolean isOpaque() {
        for (int pixel : argb) {
            if (pixel >>> 24 != 255) {
                return false;
            }
        }
        return true;
    }

    /** All pixels, row by row from the top; a copy. */
    public int[] argb() {
        return argb.clone();
    }

    private static Sight upright(int width, int height, int[] argb, Orientation orientation) {
        if (orientation == Orientation.TOP_LEFT) {
            return new Sight(width, height, argb);
        }
        boolean swaps = orientation.swapsSides();
        int across = swaps ? height : width;
        int down = swaps ? width : height;
        int[] shown = new int[argb.length];
        AffineTransform toStored = inverse(orientation.toShown());
        Point2D.Double at = new Point2D.Double();
        for (int y = 0; y < down; y++) {
            for (int x = 0; x < across; x++) {
                // Middles of pixels in the unit square, y upwards.
                at.setLocation((x + 0.5) / across, 1 - (y + 0.5) / down);
                toStored.transform(at, at);
                int i = (int) (at.x * width);
                int j = (int) ((1 - at.y) * height);
                shown[y * across + x] = argb[j * width + i];
            }
        }
        return new Sight(across, down, shown);
    }

    private static AffineTransform inverse(AffineTransform transform) {
        try {
            return transform.createInverse();
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException(e); // turns and flips can be undone
        }
    }
}
