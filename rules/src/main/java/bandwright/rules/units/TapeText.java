package bandwright.rules.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** A length as it is read off a tape measure: 8 1/4 in inches, 209.55 in millimetres, 20.955 in centimetres; no unit. */
public final class TapeText {
    private static final long SIXTY_FOURTH = 396_875;
    private static final int PARTS = 64;

    private TapeText() {}

    /** Whether the length is a whole number of sixty-fourths of an inch. */
    public static boolean isOnAnInchTape(Length length) {
        return length.nanometres() % SIXTY_FOURTH == 0;
    }

    /** In that unit; inches as a fraction where the length is on an inch tape, else to a thousandth. */
    public static String of(Length length, LengthUnit unit) {
        if (unit == LengthUnit.IN && isOnAnInchTape(length)) {
            return fraction(length.nanometres() / SIXTY_FOURTH);
        }
        return plain(value(length, unit));
    }

    /** The number that {@link #of} prints. */
    public static BigDecimal value(Length length, LengthUnit unit) {
        return switch (unit) {
            case IN ->
                isOnAnInchTape(length)
                        ? BigDecimal.valueOf(length.nanometres() / SIXTY_FOURTH).divide(BigDecimal.valueOf(PARTS))
                        : BigDecimal.valueOf(length.inches()).setScale(3, RoundingMode.HALF_UP);
            case MM -> length.mm2();
            case CM -> length.mm2().movePointLeft(1);
        };
    }

    private static String plain(BigDecimal value) {
        BigDecimal bare = value.stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
    }

    private static String fraction(long sixtyFourths) {
        String sign = sixtyFourths < 0 ? "-" : "";
        long whole = Math.abs(sixtyFourths) / PARTS;
        long over = Math.abs(sixtyFourths) % PARTS;
        if (over == 0) {
            return sign + whole;
        }
        long divisor = BigInteger.valueOf(over).gcd(BigInteger.valueOf(PARTS)).longValue();
        String part = over / divisor + "/" + PARTS / divisor;
        return sign + (whole == 0 ? part : whole + " " + part);
    }
}
