package bandwright.rules.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How long something is. Whole nanometres behind a millimetre face: an inch (25.4 mm by definition), 1/64 in and every
 * decimal of a millimetre down to 0.000001 mm are exact, and so are sums, equality and sort order.
 */
public record Length(long nanometres) implements Comparable<Length> {
    public static final Length ZERO = new Length(0);
    private static final double NM_PER_MM = 1_000_000;
    private static final double NM_PER_INCH = 25_400_000;

    public static Length mm(double millimetres) {
        return rounded(millimetres * NM_PER_MM);
    }

    public static Length inches(double inches) {
        return rounded(inches * NM_PER_INCH);
    }

    /** An exact decimal or fraction of a millimetre; used where text is read, so that 9.875 in stays 250.825 mm. */
    public static Length mm(BigDecimal millimetres) {
        return new Length(
                millimetres.movePointRight(6).setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    /** The one place where a computed length is rounded. */
    private static Length rounded(double nanometres) {
        if (!(Math.abs(nanometres) < 1e15)) {
            throw new IllegalArgumentException("not a length: " + nanometres + " nm");
        }
        return new Length(Math.round(nanometres));
    }

    public double mm() {
        return nanometres / NM_PER_MM;
    }

    public double inches() {
        return nanometres / NM_PER_INCH;
    }

    /** Millimetres rounded half up to two decimals, as run.json and the papers print them. */
    public BigDecimal mm2() {
        return BigDecimal.valueOf(nanometres, 6).setScale(2, RoundingMode.HALF_UP);
    }

    public Length plus(Length other) {
        return new Length(Math.addExact(nanometres, other.nanometres));
    }

    public Length minus(Length other) {
        return new Length(Math.subtractExact(nanometres, other.nanometres));
    }

    public Length times(double factor) {
        return rounded(nanometres * factor);
    }

    public Length half() {
        return times(0.5);
    }

    public Length negated() {
        return new Length(-nanometres);
    }

    public Length atLeast(Length other) {
        return compareTo(other) >= 0 ? this : other;
    }

    public Length atMost(Length other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public boolean isPositive() {
        return nanometres > 0;
    }

    public boolean isNegative() {
        return nanometres < 0;
    }

    public boolean isZero() {
        return nanometres == 0;
    }

    public boolean longerThan(Length other) {
        return nanometres > other.nanometres;
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }

    /** For people who read a log or a failed test, never for papers. */
    @Override
    public String toString() {
        return BigDecimal.valueOf(nanometres, 6).stripTrailingZeros().toPlainString() + " mm";
    }
}
