package bandwright.pipeline.write.sheets.check;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.Arrays;

/**
 * How alike two drawings are in a box: both are averaged over cells of eight pixels, 1.4 mm,, and the share of cells counts that
 * differ clearly. Fine detail may be drawn differently by two readers; where something stands may not. A picture of
 * 97 % leaves a white edge of 1.5 % a side, which is more of its cells than may differ.
 *
 * @param share of the cells that differ clearly, 0 to 1
 */
record Likeness(double share) {
    private static final int CELL = 8;

    /** A cell is so many pixels of an enlarged picture wide: where two meet counts little in it. [J] */
    private static final int PIXELS = 4;

    /** Of 255: more than any two readers' smoothing differs. [J] */
    private static final int CLEARLY = 32;

    private static final double MOST = 0.04;

    boolean isAlike() {
        return share <= MOST;
    }

    static Likeness of(BufferedImage drawn, BufferedImage expected, Rectangle box) {
        return of(drawn, expected, box, 0);
    }

    /**
     * Of pictures that are drawn larger than they are.
     *
     * @param pixel how large one of their pixels is drawn, at most: two readers pass from one to the next in different ways,
     *     so that cells hold several
     */
    static Likeness of(BufferedImage drawn, BufferedImage expected, Rectangle box, double pixel) {
        int widest = Math.max(CELL, Math.min(box.width, box.height) / 3);
        int cell = (int) Math.max(CELL, Math.min(widest, Math.ceil(PIXELS * pixel)));
        int across = box.width / cell;
        int down = box.height / cell;
        if (across == 0 || down == 0) {
            return new Likeness(0);
        }
        double[][] one = cells(drawn, box, across, down, cell);
        double[][] other = cells(expected, box, across, down, cell);
        double least = share(one, other);
        if (least > MOST) {
            // A colour profile that only one of the readers obeys changes the tones of a picture, not its shapes.
            least = Math.min(least, share(one, tonedAlike(one, other)));
        }
        return new Likeness(least);
    }

    private static double share(double[][] one, double[][] other) {
        int count = one[0].length;
        int clearly = 0;
        for (int i = 0; i < count; i++) {
            double most = 0;
            for (int channel = 0; channel < one.length; channel++) {
                most = Math.max(most, Math.abs(one[channel][i] - other[channel][i]));
            }
            clearly += most > CLEARLY ? 1 : 0;
        }
        return (double) clearly / count;
    }

    /** The other's values by rank: its darkest cell as dark as the one's darkest, and so on. */
    private static double[][] tonedAlike(double[][] one, double[][] other) {
        double[][] toned = new double[other.length][];
        for (int channel = 0; channel < other.length; channel++) {
            double[] target = one[channel].clone();
            double[] ranks = other[channel].clone();
            Arrays.sort(target);
            Arrays.sort(ranks);
            toned[channel] = Arrays.stream(other[channel])
                    .map(value -> target[rank(ranks, value)])
                    .toArray();
        }
        return toned;
    }

    /** The middle of all places that have this value. */
    private static int rank(double[] sorted, double value) {
        int first = firstFrom(sorted, value, false);
        int last = firstFrom(sorted, value, true) - 1;
        return (first + last) / 2;
    }

    /** The first place whose value is not less, or, beyond equals, more. */
    private static int firstFrom(double[] sorted, double value, boolean beyondEquals) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) / 2;
            if (sorted[middle] < value || (beyondEquals && sorted[middle] == value)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double[][] cells(BufferedImage image, Rectangle box, int across, int down, int side) {
        int[][] sums = new int[3][across * down];
        int[] pixels = pixels(image, box);
        for (int y = 0; y < down * side; y++) {
            for (int x = 0; x < across * side; x++) {
                int pixel = pixels[y * box.width + x];
                int cell = y / side * across + x / side;
                sums[0][cell] += pixel >> 16 & 255;
                sums[1][cell] += pixel >> 8 & 255;
                sums[2][cell] += pixel & 255;
            }
        }
        return Arrays.stream(sums).map(sum -> means(sum, side)).toArray(double[][]::new);
    }

    /** As they are stored if that is as red, green and blue: many times quicker than to have each turned into them. */
    private static int[] pixels(BufferedImage image, Rectangle box) {
        return image.getType() == BufferedImage.TYPE_INT_RGB
                ? (int[]) image.getRaster().getDataElements(box.x, box.y, box.width, box.height, null)
                : image.getRGB(box.x, box.y, box.width, box.height, null, 0, box.width);
    }

    private static double[] means(int[] sums, int side) {
        return Arrays.stream(sums)
                .mapToDouble(sum -> sum / (double) (side * side))
                .toArray();
    }
}
