package bandwright.pipeline.write.pdf;

import bandwright.rules.units.Length;

/**
 * How many PDF points a length is: 25.4 mm are 72 (ISO 32000-1, 8.3.2.3, the default user space unit). Nothing else in
 * the code knows points.
 */
public final class Points {
    private static final double PER_INCH = 72;
    private static final double MM_PER_INCH = 25.4;

    private Points() {}

    public static double of(Length length) {
        return length.mm() * PER_INCH / MM_PER_INCH;
    }

    public static Length length(double points) {
        return Length.mm(points * MM_PER_INCH / PER_INCH);
    }
}
