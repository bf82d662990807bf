package bandwright.pipeline.write.sheets;

import bandwright.pipeline.artwork.Orientation;
import java.awt.image.BufferedImage;

/** Pictures stored so that their orientation tag has something to mend. */
final class TaggedPictures {
    private TaggedPictures() {}

    /** Stored pixel (column, row) for what is seen, by the table of tag 274 in TIFF 6.0. */
    static BufferedImage stored(BufferedImage seen, Orientation orientation) {
        int w = seen.getWidth();
        int h = seen.getHeight();
        boolean swaps = orientation.swapsSides();
        BufferedImage stored = new BufferedImage(swaps ? h : w, swaps ? w : h, BufferedImage.TYPE_INT_RGB);
        for (int row = 0; row < stored.getHeight(); row++) {
            for (int column = 0; column < stored.getWidth(); column++) {
                int pixel =
                        switch (orientation) {
                            case TOP_LEFT -> seen.getRGB(column, row);
                            case TOP_RIGHT -> seen.getRGB(w - 1 - column, row);
                            case BOTTOM_RIGHT -> seen.getRGB(w - 1 - column, h - 1 - row);
                            case BOTTOM_LEFT -> seen.getRGB(column, h - 1 - row);
                            case LEFT_TOP -> seen.getRGB(row, column);
                            case RIGHT_TOP -> seen.getRGB(w - 1 - row, column);
                            case RIGHT_BOTTOM -> seen.getRGB(w - 1 - row, h - 1 - column);
                            case LEFT_BOTTOM -> seen.getRGB(row, h - 1 - column);
                        };
                stored.setRGB(column, row, pixel);
            }
        }
        return stored;
    }
}
