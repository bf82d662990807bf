package bandwright.rules.table;

import bandwright.rules.units.Length;

/**
 * Between which lengths a bare number makes sense in a column. A bare 260 as a circumference is a mug in a shop that
 * measures in millimetres and 6.6 m in one that measures in inches. Our judgement; a number with its unit may be
 * anything of the right sign.
 */
public record Plausible(double leastMm, double mostMm, Sign sign) {
    public static final Plausible CIRCUMFERENCE = new Plausible(70, 700, Sign.POSITIVE);
    public static final Plausible DIAMETER = new Plausible(20, 240, Sign.POSITIVE);
    /** 0 lets every width in. */
    public static final Plausible LEAST_DIAMETER = new Plausible(20, 240, Sign.NOT_NEGATIVE);

    public static final Plausible SIZE = new Plausible(20, 700, Sign.POSITIVE);
    public static final Plausible PAGE = new Plausible(50, 2000, Sign.POSITIVE);
    public static final Plausible MARGIN = new Plausible(0.3, 60, Sign.NOT_NEGATIVE);
    /** A flat blank may be printed past its edge. */
    public static final Plausible EDGE = new Plausible(0.3, 60, Sign.ANY);

    public static final Plausible HANDLE = new Plausible(4, 150, Sign.NOT_NEGATIVE);
    public static final Plausible SMALL = new Plausible(0.3, 40, Sign.NOT_NEGATIVE);
    public static final Plausible FLAG = new Plausible(4, 150, Sign.NOT_NEGATIVE);

    /** Which signs a length may have. */
    public enum Sign {
        ANY,
        NOT_NEGATIVE,
        POSITIVE
    }

    boolean holds(Length length) {
        double mm = Math.abs(length.mm());
        return mm == 0 || (mm >= leastMm && mm <= mostMm);
    }
}
