package bandwright.pipeline.sample.art;

/** Figures drawn with one round pen, so that no font is asked for; a full stop is the only other sign. */
final class Numerals {
    private static final String[] DIGITS = {
        "M3 0 C5 0 6 2 6 5 C6 8 5 10 3 10 C1 10 0 8 0 5 C0 2 1 0 3 0",
        "M1.2 2 L3.4 0 L3.4 10",
        "M0.2 2.6 C0.4 -0.8 5.8 -1 5.8 2.8 C5.8 5 2 7 0 10 L6 10",
        "M0.3 1.6 C1.2 -0.6 5.6 -0.4 5.6 2.6 C5.6 4.4 4 4.9 2.6 4.9 C4.4 4.9 6 5.6 6 7.4 C6 10.6 1 10.9 0 8.4",
        "M4.6 10 L4.6 0 L0 7 L6 7",
        "M5.4 0 L1 0 L0.6 4.6 C2 3.4 6 3.4 6 6.8 C6 10.6 1 11 0 8.6",
        "M5 0.4 C2 0.8 0 3.6 0 6.8 C0 11 6 11 6 6.8 C6 3 0.6 3 0.2 6.4",
        "M0 0 L6 0 L2.2 10",
        "M3 4.8 C0 4.6 0 0 3 0 C6 0 6 4.6 3 4.8 C-0.8 5 -0.8 10 3 10 C6.8 10 6.8 5 3 4.8",
        "M5.8 3.4 C5.4 7 0 7 0 3.2 C0 -1 6 -1 6 3.2 C6 6.4 4 9.2 1 9.6",
    };

    private Numerals() {}

    /** The figures, centred at x, y; high as said. */
    static void draw(Canvas c, int ink, String figures, double x, double y, double high, double degrees) {
        double unit = high / 10;
        double left = -width(figures) / 2;
        for (int i = 0; i < figures.length(); i++) {
            char figure = figures.charAt(i);
            if (figure == '.') {
                c.fill(ink, Shapes.at(x, y, unit, degrees, Shapes.disc(left + 0.4, 4.6, 0.9)));
                left += 2.6;
            } else {
                var drawn = Shapes.at(left, -5, 1, 0, Shapes.path(DIGITS[figure - '0']));
                c.line(ink, unit * 1.5, Shapes.at(x, y, unit, degrees, drawn));
                left += 8.4;
            }
        }
    }

    private static double width(String figures) {
        long stops = figures.chars().filter(c -> c == '.').count();
        return (figures.length() - stops) * 8.4 + stops * 2.6 - 2.4;
    }
}
