package bandwright.pipeline.type;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.List;

/**
 * How thin the thin strokes of a font are. A round brush is drawn through its letters: the widest one that still reaches
 * all but a twentieth of their ink is as wide as the thin strokes (a morphological opening; P. Soille, "Morphological
 * Image Analysis", chapter 4). The thin strokes of a serif are some hundredths of its size, those of a sans twice that.
 */
final class Strokes {
    /** Pixels that the type size takes. */
    private static final int SIZE = 160;

    /** Ends and corners are out of a round brush's reach in any font; thin strokes are more than that. [J] */
    private static final double OUT_OF_REACH = 0.05;

    private static final String LETTERS = "aeghknostvxzAEHNOSVX0258";

    /** A step to the next pixel and one to the next across a corner, in thirds of a pixel (Borgefors' 3-4 distance). */
    private static final int STRAIGHT = 3;

    private static final int DIAGONAL = 4;
    private static final int FAR = 1 << 20;

    private Strokes() {}

    /** The width of the thin strokes over the type size; 1 for a font without Latin letters, of which nobody knows. */
    static double share(Font font) {
        if (font.canDisplayUpTo(LETTERS) >= 0) {
            return 1;
        }
        // Side by side, a little apart.
        return thinnest(new Shaping(List.of(font)).line(String.join(" ", LETTERS.split("")), false)) / TypeCase.EM;
    }

    /** The width of the thin strokes of a shape at the size that type is shaped at, in its own units. */
    static double thinnest(Shape shape) {
        boolean[][] ink = ink(shape);
        int[][] depth = distances(ink, false);
        int thin = 1;
        int wide = SIZE;
        while (wide - thin > 1) {
            int middle = (thin + wide) / 2;
            if (outOfReach(ink, depth, middle) <= OUT_OF_REACH) {
                thin = middle;
            } else {
                wide = middle;
            }
        }
        return 2.0 * thin / STRAIGHT * TypeCase.EM / SIZE;
    }

    private static boolean[][] ink(Shape shape) {
        Rectangle2D bounds = Shaping.ink(shape);
        double scale = SIZE / TypeCase.EM;
        int width = (int) Math.ceil(bounds.getWidth() * scale) + 4;
        int height = (int) Math.ceil(bounds.getHeight() * scale) + 4;
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        AffineTransform place = AffineTransform.getTranslateInstance(2, 2);
        place.scale(scale, scale);
        place.translate(-bounds.getMinX(), -bounds.getMinY());
        g.fill(place.createTransformedShape(shape));
        g.dispose();
        byte[] grey = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        boolean[][] ink = new boolean[height][width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                ink[y][x] = grey[y * width + x] != 0;
            }
        }
        return ink;
    }

    /** The share of the ink that no brush of that radius, in thirds of a pixel, reaches from within. */
    private static double outOfReach(boolean[][] ink, int[][] depth, int radius) {
        boolean[][] middles = new boolean[ink.length][ink[0].length];
        for (int y = 0; y < ink.length; y++) {
            for (int x = 0; x < ink[y].length; x++) {
                middles[y][x] = depth[y][x] >= radius;
            }
        }
        int[][] away = distances(middles, true);
        int all = 0;
        int missed = 0;
        for (int y = 0; y < ink.length; y++) {
            for (int x = 0; x < ink[y].length; x++) {
                if (ink[y][x]) {
                    all++;
                    missed += away[y][x] >= radius ? 1 : 0;
                }
            }
        }
        return all == 0 ? 0 : (double) missed / all;
    }

    /** How far each pixel is from the nearest one that is, or isn't, marked; in two sweeps. */
    private static int[][] distances(boolean[][] marks, boolean toMarked) {
        int height = marks.length;
        int width = marks[0].length;
        int[][] away = new int[height][width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                away[y][x] = marks[y][x] == toMarked ? 0 : FAR;
                nearer(away, y, x, y, x - 1, STRAIGHT);
                nearer(away, y, x, y - 1, x, STRAIGHT);
                nearer(away, y, x, y - 1, x - 1, DIAGONAL);
                nearer(away, y, x, y - 1, x + 1, DIAGONAL);
            }
        }
        for (int y = height - 1; y >= 0; y--) {
            for (int x = width - 1; x >= 0; x--) {
                nearer(away, y, x, y, x + 1, STRAIGHT);
                nearer(away, y, x, y + 1, x, STRAIGHT);
                nearer(away, y, x, y + 1, x + 1, DIAGONAL);
                nearer(away, y, x, y + 1, x - 1, DIAGONAL);
            }
        }
        return away;
    }

    private static void nearer(int[][] away, int y, int x, int fromY, int fromX, int step) {
        if (fromY >= 0 && fromY < away.length && fromX >= 0 && fromX < away[fromY].length) {
            away[y][x] = Math.min(away[y][x], away[fromY][fromX] + step);
        }
    }
}
