package bandwright.pipeline.write.pdf;

import bandwright.pipeline.pixels.StoredPixels;

/**
 * One pixel's colour between the pixels of a picture. Where the picture is no finer than what is asked, by the cubic of
 * E. Catmull and R. Rom ("A class of local interpolating splines", 1974), which keeps edges; where it is finer, by the
 * mean of four straight interpolations within the pixel. Beyond the picture's edge its edge goes on.
 *
 * <p>Sums are kept in local variables and whole numbers, which the launcher's quick compiler keeps in registers.
 */
final class Resampling {
    private static final int PHASES = 256;
    private static final int ONE = 1 << 12;
    private static final int[][] CUBIC = cubic();

    private final StoredPixels pixels;
    private final int width;
    private final int height;
    private final int[] xs = new int[4];
    private final int[] ys = new int[4];

    Resampling(StoredPixels pixels) {
        this.pixels = pixels;
        this.width = pixels.width();
        this.height = pixels.height();
    }

    private static int[][] cubic() {
        int[][] weights = new int[PHASES][4];
        for (int p = 0; p < PHASES; p++) {
            double t = (double) p / PHASES;
            weights[p][0] = (int) Math.round(ONE * (-t + 2 * t * t - t * t * t) / 2);
            weights[p][2] = (int) Math.round(ONE * (t + 4 * t * t - 3 * t * t * t) / 2);
            weights[p][3] = (int) Math.round(ONE * (-t * t + t * t * t) / 2);
            weights[p][1] = ONE - weights[p][0] - weights[p][2] - weights[p][3];
        }
        return weights;
    }

    /** At a point of the picture, its pixels' middles at halves; alpha, red, green, blue of 8 bits. */
    int sharp(double x, double y) {
        int px = (int) Math.floor((x - 0.5) * PHASES);
        int py = (int) Math.floor((y - 0.5) * PHASES);
        for (int i = 0; i < 4; i++) {
            xs[i] = clamp((px >> 8) + i - 1, width);
            ys[i] = clamp((py >> 8) + i - 1, height) * width;
        }
        int[] across = CUBIC[px & (PHASES - 1)];
        int[] down = CUBIC[py & (PHASES - 1)];
        return pixels.hasAlpha() ? sharpWithAlpha(across, down) : sharpOpaque(across, down);
    }

    private int sharpOpaque(int[] across, int[] down) {
        int red = 0;
        int green = 0;
        int blue = 0;
        for (int j = 0; j < 4; j++) {
            int a = pixels.at(ys[j] + xs[0]);
            int b = pixels.at(ys[j] + xs[1]);
            int c = pixels.at(ys[j] + xs[2]);
            int d = pixels.at(ys[j] + xs[3]);
            int w0 = across[0];
            int w1 = across[1];
            int w2 = across[2];
            int w3 = across[3];
            red += down[j]
                    * (((a >> 16 & 255) * w0 + (b >> 16 & 255) * w1 + (c >> 16 & 255) * w2 + (d >> 16 & 255) * w3)
                            >> 8);
            green += down[j]
                    * (((a >> 8 & 255) * w0 + (b >> 8 & 255) * w1 + (c >> 8 & 255) * w2 + (d >> 8 & 255) * w3) >> 8);
            blue += down[j] * (((a & 255) * w0 + (b & 255) * w1 + (c & 255) * w2 + (d & 255) * w3) >> 8);
        }
        // The weights across sum to 2^12, less the eight bits shifted out; those down to 2^12.
        return 0xFF << 24 | eightBits(red, 16) << 16 | eightBits(green, 16) << 8 | eightBits(blue, 16);
    }

    private int sharpWithAlpha(int[] across, int[] down) {
        int alpha = 0;
        int red = 0;
        int green = 0;
        int blue = 0;
        for (int j = 0; j < 4; j++) {
            for (int i = 0; i < 4; i++) {
                int pixel = pixels.at(ys[j] + xs[i]);
                int weight = ((across[i] * down[j]) >> 8) * (pixel >>> 24) / 255;
                alpha += weight;
                red += weight * (pixel >> 16 & 255);
                green += weight * (pixel >> 8 & 255);
                blue += weight * (pixel & 255);
            }
        }
        return mixed(alpha, red, green, blue, ONE * (ONE >> 8));
    }

    private static int eightBits(int sum, int shift) {
        return Math.max(0, Math.min(255, (sum + (1 << (shift - 1))) >> shift));
    }

    /**
     * The mean over one pixel that is asked for.
     *
     * @param dxi how far the next pixel to the right lies in the picture; the others likewise, j = the next one below
     */
    int mean(double x, double y, double dxi, double dyi, double dxj, double dyj) {
        int alpha = 0;
        int red = 0;
        int green = 0;
        int blue = 0;
        boolean hasAlpha = pixels.hasAlpha();
        for (int q = 0; q < 4; q++) {
            double i = (q & 1) == 0 ? -0.25 : 0.25;
            double j = (q & 2) == 0 ? -0.25 : 0.25;
            int px = (int) Math.floor((x + i * dxi + j * dxj - 0.5) * PHASES);
            int py = (int) Math.floor((y + i * dyi + j * dyj - 0.5) * PHASES);
            int fx = px & (PHASES - 1);
            int fy = py & (PHASES - 1);
            for (int k = 0; k < 4; k++) {
                int column = clamp((px >> 8) + (k & 1), width);
                int row = clamp((py >> 8) + (k >> 1), height);
                int pixel = pixels.at(row * width + column);
                int weight = ((k & 1) == 0 ? PHASES - fx : fx) * ((k & 2) == 0 ? PHASES - fy : fy);
                weight = hasAlpha ? weight * (pixel >>> 24) / 255 : weight;
                alpha += weight;
                red += weight * (pixel >> 16 & 255);
                green += weight * (pixel >> 8 & 255);
                blue += weight * (pixel & 255);
            }
        }
        return mixed(alpha, red, green, blue, 4 * PHASES * PHASES);
    }

    private static int clamp(int at, int length) {
        return Math.max(0, Math.min(length - 1, at));
    }

    /** Sums of colours that were weighed by how opaque they are. */
    private static int mixed(int alpha, int red, int green, int blue, int whole) {
        if (alpha <= 0) {
            return 0;
        }
        int opacity = (int) Math.min(255, (alpha * 255L + whole / 2) / whole);
        return opacity << 24 | channel(red, alpha) << 16 | channel(green, alpha) << 8 | channel(blue, alpha);
    }

    private static int channel(int sum, int alpha) {
        return Math.max(0, Math.min(255, (sum + alpha / 2) / alpha));
    }
}
