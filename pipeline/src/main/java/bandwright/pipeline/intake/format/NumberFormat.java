package bandwright.pipeline.intake.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How a cell shows its number: 123 in the format {@code 00000} is "00123", in {@code "Q"0000} "Q0123", 0.25 in
 * {@code 0%} "25%". Only what can be part of an order number or a measure is followed: leading zeros, words, decimals
 * and percent. Nothing is rounded away (2.5 in the format {@code 0} stays "2.5") and thousands are not parted.
 *
 * @param isDate whether it shows a day
 * @param digits how many digits at least stand before the point
 * @param decimals how many at least stand behind it
 */
record NumberFormat(boolean isDate, String before, int digits, int decimals, boolean percent, String behind) {
    static final NumberFormat GENERAL = new NumberFormat(false, "", 1, 0, false, "");
    private static final NumberFormat DATE = new NumberFormat(true, "", 1, 0, false, "");

    /** Words in quotes, escaped signs, colours, conditions, fillers and gaps: no letter in them means a day. */
    private static final Pattern ASIDE = Pattern.compile("\"[^\"]*\"|\\\\.|\\[[^\\]]*]|[_*].");

    /** All that a double keeps for certain, and all that spreadsheet programs show. */
    private static final int SURE_DIGITS = 15;

    private static final double FIRST_UNSURE = 1e15;

    /** The formats that files name by number only: ECMA-376 Part 1, 18.8.30. */
    static NumberFormat builtIn(int id) {
        if ((id >= 14 && id <= 17) || id == 22 || (id >= 27 && id <= 36) || (id >= 50 && id <= 58)) {
            return DATE;
        }
        return switch (id) {
            case 2, 4, 39, 40 -> of("0.00");
            case 9 -> of("0%");
            case 10 -> of("0.00%");
            default -> GENERAL;
        };
    }

    static NumberFormat of(String code) {
        String bare = ASIDE.matcher(code).replaceAll("").toLowerCase(Locale.ROOT);
        if (bare.contains("general") || bare.equals("@") || code.length() > 255) {
            return GENERAL;
        }
        if (bare.contains("y") || bare.contains("d") || bare.contains("mmm")) {
            return DATE;
        }
        return new FormatCode(code).parsed();
    }

    /** Whether digits of this number may have been lost when it was typed in: a whole number of over 15 digits. */
    static boolean isDamaged(double value) {
        return Math.abs(value) >= FIRST_UNSURE;
    }

    String shown(double value) {
        BigDecimal exact = new BigDecimal(value).round(new MathContext(SURE_DIGITS, RoundingMode.HALF_EVEN));
        if (exact.signum() == 0) {
            exact = BigDecimal.ZERO;
        }
        if (Math.abs(value) >= 1e21) {
            return exact.stripTrailingZeros().toString();
        }
        BigDecimal number = (percent ? exact.movePointRight(2) : exact).stripTrailingZeros();
        number = number.setScale(Math.max(decimals, Math.max(0, number.scale())), RoundingMode.UNNECESSARY);
        String plain = number.abs().toPlainString();
        int whole = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
        String zeros = "0".repeat(Math.max(0, digits - whole));
        return (number.signum() < 0 ? "-" : "") + before + zeros + plain + behind;
    }
}
