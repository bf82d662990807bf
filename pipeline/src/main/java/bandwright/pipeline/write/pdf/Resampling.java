package bandwright.pipeline.write.pdf;

/**
 * One pixel's colour between the pixels of a picture. Where the picture is no finer than what is asked, by the cubic of
 * E. Catmull and R. Rom ("A class of local interpolating splines", 1974), which keeps edges; where it is finer, by the
 * mean of four straight interpolations within the pixel. Beyond the picture's edge its edge goes on.
 */
final class Resampling {
    private static final int PHASES = 256;
    private static final int ONE = 1 << 12;
    private static final int[][] CUBIC = cubic();

    private final SourcePixels pixels;
    private int alpha;
    private int red;
    private int green;
    private int blue;

    Resampling(SourcePixels pixels) {
        this.pixels = pixels;
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
        int[] across = CUBIC[px & (PHASES - 1)];
        int[] down = CUBIC[py & (PHASES - 1)];
        clear();
        for (int j = 0; j < 4; j++) {
            int row = clamp((py >> 8) + j - 1, pixels.height());
            for (int i = 0; i < 4; i++) {
                add(pixels.at(clamp((px >> 8) + i - 1, pixels.width()), row), (across[i] * down[j]) >> 8);
            }
        }
        return mixed(ONE * (ONE >> 8));
    }

    /**
     * The mean over one pixel that is asked for.
     *
     * @param dxi how far the next pixel to the right lies in the picture; the others likewise, j = the next one below
     */
    int mean(double x, double y, double dxi, double dyi, double dxj, double dyj) {
        clear();
        for (int q = 0; q < 4; q++) {
            double i = (q & 1) == 0 ? -0.25 : 0.25;
            double j = (q & 2) == 0 ? -0.25 : 0.25;
            addBetween(x + i * dxi + j * dxj, y + i * dyi + j * dyj);
        }
        return mixed(4 * PHASES * PHASES);
    }

    private void addBetween(double x, double y) {
        int px = (int) Math.floor((x - 0.5) * PHASES);
        int py = (int) Math.floor((y - 0.5) * PHASES);
        int fx = px & (PHASES - 1);
        int fy = py & (PHASES - 1);
        int left = clamp(px >> 8, pixels.width());
        int right = clamp((px >> 8) + 1, pixels.width());
        int top = clamp(py >> 8, pixels.height());
        int bottom = clamp((py >> 8) + 1, pixels.height());
        add(pixels.at(left, top), (PHASES - fx) * (PHASES - fy));
        add(pixels.at(right, top), fx * (PHASES - fy));
        add(pixels.at(left, bottom), (PHASES - fx) * fy);
        add(pixels.at(right, bottom), fx * fy);
    }

    private static int clamp(int at, int length) {
        return Math.max(0, Math.min(length - 1, at));
    }

    private void clear() {
        alpha = 0;
        red = 0;
        green = 0;
        blue = 0;
    }

    private void add(int pixel, int weight) {
        int opaque = pixels.hasAlpha() ? weight * (pixel >>> 24) / 255 : weight;
        alpha += opaque;
        red += opaque * (pixel >> 16 & 255);
        green += opaque * (pixel >> 8 & 255);
        blue += opaque * (pixel & 255);
    }

    private int mixed(int whole) {
        if (alpha <= 0) {
            return 0;
        }
        int opacity = (int) Math.min(255, (alpha * 255L + whole / 2) / whole);
        return opacity << 24 | channel(red) << 16 | channel(green) << 8 | channel(blue);
    }

    private int channel(int sum) {
        return Math.max(0, Math.min(255, (sum + alpha / 2) / alpha));
    }
}
