package bandwright.rules.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody wrote as a number with a unit, exactly: "9 7/8 in" is 79/8 and "in", "260mm" is 260 and "mm", "20" is 20
 * and no unit.
 *
 * @param over the number is over / under, so that 1/3 stays 1/3
 * @param unit as written, in small letters and without a full stop; empty = a bare number
 */
public record Amount(BigDecimal over, BigDecimal under, String unit) {
    private static final Pattern FORM =
            Pattern.compile("([+-]?)\\s*(?:(?:(\\d{1,6})(?:\\s+|\\s*-\\s*))?(\\d{1,6})\\s*/\\s*(\\d{1,6})"
                    + "|(\\d{1,12}(?:\\.\\d{0,12})?|\\.\\d{1,12}))\\s*([^\\d\\s.].*)?");
    private static final String FRACTIONS = "½¼¾⅛⅜⅝⅞⅓⅔";
    private static final String[] SPELLED = {"1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3"};

    /** The amount; empty where the text does not begin with a number of this form. */
    public static Optional<Amount> parse(String text) {
        Matcher form = FORM.matcher(plain(text));
        if (!form.matches()) {
            return Optional.empty();
        }
        String unit = form.group(6) == null ? "" : unit(form.group(6));
        BigDecimal under = form.group(4) == null ? BigDecimal.ONE : new BigDecimal(form.group(4));
        if (under.signum() == 0) {
            return Optional.empty();
        }
        BigDecimal over = form.group(5) == null ? mixed(form, under) : new BigDecimal(form.group(5));
        return Optional.of(new Amount("-".equals(form.group(1)) ? over.negate() : over, under, unit));
    }

    private static BigDecimal mixed(Matcher form, BigDecimal under) {
        BigDecimal wholes = form.group(2) == null ? BigDecimal.ZERO : new BigDecimal(form.group(2));
        return wholes.multiply(under).add(new BigDecimal(form.group(3)));
    }

    /** One kind of minus, one kind of space, fractions spelled out: what spreadsheet programs like to put in their place. */
    private static String plain(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int fraction = FRACTIONS.indexOf(c);
            if (fraction >= 0) {
                out.append(' ').append(SPELLED[fraction]);
            } else if (c == '\u2212' || c == '\u2013') {
                out.append('-');
            } else {
                out.append(c == '\u2044' ? '/' : Character.isSpaceChar(c) ? ' ' : c);
            }
        }
        return out.toString().strip();
    }

    private static String unit(String written) {
        String unit = written.strip().toLowerCase(Locale.ROOT);
        return unit.endsWith(".") ? unit.substring(0, unit.length() - 1) : unit;
    }

    public boolean isBare() {
        return unit.isEmpty();
    }

    public boolean isZero() {
        return over.signum() == 0;
    }

    /** This many of something of that size, to the nearest whole, half up: 79/8 of 25,400,000 nm. */
    public BigInteger times(long size) {
        return over.multiply(BigDecimal.valueOf(size))
                .divide(under, 0, RoundingMode.HALF_UP)
                .toBigIntegerExact();
    }

    /** Whether this many of something of that size is a whole number. */
    public boolean isWhole(long size) {
        return over.multiply(BigDecimal.valueOf(size)).remainder(under).signum() == 0;
    }

    public double value() {
        return over.doubleValue() / under.doubleValue();
    }
}
