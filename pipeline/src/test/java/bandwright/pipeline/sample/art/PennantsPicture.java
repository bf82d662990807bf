package bandwright.pipeline.sample.art;

import java.util.Locale;

/** The regatta's pennants over the sea at sunset: a drawing of shapes, sharp at any size, as SVG. */
final class PennantsPicture {
    private static final int WIDTH = 2200;
    private static final int HEIGHT = 1000;
    private static final int[] FLAGS = {Ink.CORAL, Ink.LAMP, Ink.SEA, Ink.SHALLOW, Ink.NIGHT};
    private static final int PENNANTS = 9;

    private final StringBuilder out = new StringBuilder();

    private PennantsPicture() {}

    static String draw() {
        PennantsPicture picture = new PennantsPicture();
        picture.out.append("""
                <svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %d %d">
                """.formatted(WIDTH, HEIGHT, WIDTH, HEIGHT));
        picture.shape("rect", "width=\"" + WIDTH + "\" height=\"" + HEIGHT + "\"", Ink.CREAM);
        picture.sun();
        picture.gulls();
        picture.swag(-40, 1100);
        picture.swag(1100, 2240);
        picture.wave(730, 64, 0, Ink.SHALLOW);
        picture.wave(795, 70, 110, Ink.SEA);
        picture.wave(862, 60, 40, Ink.NIGHT);
        return picture.out.append("</svg>\n").toString();
    }

    private void shape(String kind, String attributes, int colour) {
        out.append(String.format(Locale.ROOT, "<%s %s fill=\"#%06X\"/>%n", kind, attributes, colour)
                .replace("\r", ""));
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /** Half of it is under water; stripes of cream grow towards the sea. */
    private void sun() {
        shape("circle", "cx=\"1100\" cy=\"700\" r=\"285\"", Ink.LAMP);
        for (int i = 0; i < 5; i++) {
            shape("rect", say("x=\"800\" y=\"%d\" width=\"600\" height=\"%d\"", 530 + 44 * i, 4 + 5 * i), Ink.CREAM);
        }
    }

    private void gulls() {
        int[][] places = {{420, 560, 60}, {560, 500, 42}, {1690, 540, 56}, {1820, 600, 38}};
        for (int[] at : places) {
            String path = say(
                    "d=\"M%d %d q%d %d %d 0 q%d %d %d 0 q%d %d %d %d q%d %d %d %d z\"",
                    at[0] - at[2],
                    at[1],
                    at[2] / 2,
                    -at[2] / 2,
                    at[2],
                    at[2] / 2,
                    -at[2] / 2,
                    at[2],
                    -at[2] / 2,
                    -at[2] / 3,
                    -at[2],
                    at[2] / 6,
                    -at[2] / 2,
                    -at[2] / 2,
                    -at[2],
                    -at[2] / 6);
            shape("path", path, Ink.NIGHT);
        }
    }

    /** A rope that hangs between two places, and the pennants on it. */
    private void swag(double from, double to) {
        double middle = (from + to) / 2;
        for (int i = 0; i < PENNANTS; i++) {
            double t = (i + 0.5) / PENNANTS;
            double x = from + (to - from) * t;
            double y = height(t);
            double slope = Math.toDegrees(Math.atan2(slope(t), to - from));
            pennant(x, y, slope, FLAGS[(i + (from < 0 ? 0 : 4)) % FLAGS.length], i);
        }
        out.append(say(
                "<path d=\"M%.0f %.0f Q%.0f %.0f %.0f %.0f\" fill=\"none\" stroke=\"#%06X\" stroke-width=\"13\"/>\n",
                from, height(0), middle, 2 * height(0.5) - height(0), to, height(1), Ink.NIGHT));
        for (double end : new double[] {from, to}) {
            shape("circle", say("cx=\"%.0f\" cy=\"%.0f\" r=\"24\"", end, height(0)), Ink.CORAL);
            shape("circle", say("cx=\"%.0f\" cy=\"%.0f\" r=\"10\"", end, height(0)), Ink.CREAM);
        }
    }

    private static double height(double t) {
        return 120 + 4 * 150 * t * (1 - t);
    }

    private static double slope(double t) {
        return 4 * 150 * (1 - 2 * t);
    }

    private void pennant(double x, double y, double degrees, int colour, int number) {
        out.append(say("<g transform=\"translate(%.1f %.1f) rotate(%.2f)\">\n", x, y, degrees));
        shape("path", "d=\"M-48 0 H48 L0 176 Z\"", colour);
        int mark = colour == Ink.LAMP || colour == Ink.SHALLOW ? Ink.NIGHT : Ink.CREAM;
        switch (number % 3) {
            case 0 -> shape("circle", "cx=\"0\" cy=\"56\" r=\"21\"", mark);
            case 1 -> shape("path", "d=\"M-33.3 54 H33.3 L22.9 92 H-22.9 Z\"", mark);
            default -> shape("path", "d=\"M-7 0 H7 V112 L0 128 L-7 112 Z\"", mark);
        }
        out.append("</g>\n");
    }

    /** A row of crests from edge to edge, edged in cream. */
    private void wave(int y, int high, int shift, int colour) {
        StringBuilder path = new StringBuilder(say("M%d %d", -220 + shift - 220, HEIGHT + 20));
        path.append(say(" V%d", y));
        for (int x = -440 + shift; x < WIDTH + 220; x += 220) {
            path.append(say(
                    " q55 %d 130 %d q-24 %d 20 %d q36 %d 70 %d",
                    -high, -high / 2, high / 3, high / 3, high / 3, high / 6));
        }
        path.append(say(" V%d Z", HEIGHT + 20));
        out.append(
                say("<path d=\"%s\" fill=\"#%06X\" stroke=\"#%06X\" stroke-width=\"9\"/>\n", path, colour, Ink.CREAM));
    }
}
