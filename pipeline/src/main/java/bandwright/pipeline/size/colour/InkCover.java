package bandwright.pipeline.size.colour;

import bandwright.rules.units.Rgb;

/**
 * How much ink a print takes, roughly: the area that as much would cover if red, green and blue were all taken away in full.
 * Black takes its own area, a full red two thirds of it, white nothing. Enough to compare prints by, not to order ink by.
 */
public final class InkCover {
    private static final double FULL = 3 * 255;

    private InkCover() {}

    /** Of pictures and their backgrounds, in square millimetres. */
    public static double mm2(Print print) {
        return print.palette().inked().stream()
                .mapToDouble(tint -> mm2(tint.colour(), tint.mm2()))
                .sum();
    }

    /** Of a flat colour on an area. */
    public static double mm2(Rgb colour, double area) {
        return area * (FULL - colour.red() - colour.green() - colour.blue()) / FULL;
    }
}
