package bandwright.pipeline.pixels;

import java.io.IOException;

/** The row filters of PNG (ISO/IEC 15948, clause 9). Rows have their filter byte in front. */
public final class PngFilter {
    private static final int NONE = 0;
    private static final int SUB = 1;
    private static final int UP = 2;
    private static final int AVERAGE = 3;
    private static final int PAETH = 4;

    private PngFilter() {}

    /**
     * Turns a filtered row into plain samples, in place.
     *
     * @param above the plain row above; zeros above the first
     * @param distance bytes from one pixel to the next, at least 1
     */
    public static void undo(byte[] row, byte[] above, int distance) throws IOException {
        switch (row[0]) {
            case NONE -> {}
            case SUB -> {
                for (int i = 1 + distance; i < row.length; i++) {
                    row[i] += row[i - distance];
                }
            }
            case UP -> {
                for (int i = 1; i < row.length; i++) {
                    row[i] += above[i];
                }
            }
            case AVERAGE -> {
                for (int i = 1; i < row.length; i++) {
                    int left = i > distance ? row[i - distance] & 0xFF : 0;
                    row[i] += (byte) ((left + (above[i] & 0xFF)) / 2);
                }
            }
            case PAETH -> {
                for (int first = 1; first <= distance; first++) {
                    undoPaeth(row, above, first, distance);
                }
            }
            default -> throw new IOException("a row of a PNG has no known filter");
        }
        row[0] = NONE;
    }

    /**
     * One byte of every pixel at a time, its neighbours kept at hand. Where two of them are alike the third is the
     * prediction; in drawings they mostly are, and asking that first makes it three times as quick.
     */
    private static void undoPaeth(byte[] row, byte[] above, int first, int distance) {
        int left = 0;
        int corner = 0;
        for (int i = first; i < row.length; i += distance) {
            int up = above[i] & 0xFF;
            int predicted = up == corner ? left : left == corner ? up : nearest(left, up, corner);
            left = (row[i] + predicted) & 0xFF;
            row[i] = (byte) left;
            corner = up;
        }
    }

    /** The Paeth predictor: of left, above and corner the one nearest to left + above - corner. */
    private static int nearest(int left, int above, int corner) {
        int toLeft = Math.abs(above - corner);
        int toAbove = Math.abs(left - corner);
        int toCorner = Math.abs(left + above - 2 * corner);
        if (toLeft <= toAbove && toLeft <= toCorner) {
            return left;
        }
        return toAbove <= toCorner ? above : corner;
    }

    /**
     * Filters a plain row by the one of two filters that leaves smaller numbers (the rule of thumb of ISO/IEC 15948, 12.8).
     */
    public static void apply(byte[] plain, byte[] above, int distance, byte[] out) {
        long up = 0;
        for (int i = 1; i < plain.length; i++) {
            up += Math.abs((byte) (plain[i] - above[i]));
        }
        long paeth = 0;
        for (int first = 1; first <= distance; first++) {
            paeth += applyPaeth(plain, above, first, distance, out);
        }
        out[0] = PAETH;
        if (up <= paeth) {
            out[0] = UP;
            for (int i = 1; i < plain.length; i++) {
                out[i] = (byte) (plain[i] - above[i]);
            }
        }
    }

    /** One byte of every pixel, as {@link #undoPaeth} goes; gives the sum of what is left. */
    private static long applyPaeth(byte[] plain, byte[] above, int first, int distance, byte[] out) {
        long sum = 0;
        int left = 0;
        int corner = 0;
        for (int i = first; i < plain.length; i += distance) {
            int up = above[i] & 0xFF;
            int predicted = up == corner ? left : left == corner ? up : nearest(left, up, corner);
            out[i] = (byte) (plain[i] - predicted);
            sum += Math.abs(out[i]);
            left = plain[i] & 0xFF;
            corner = up;
        }
        return sum;
    }
}
