package bandwright.rules.units;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A time as people write it, in whole seconds: "3 min" is 180, "90 s" is 90, "1 h 30 min" is 5400. */
public final class TimeText {
    private static final Pattern PART = Pattern.compile("\\s*(\\d{1,6}(?:\\.\\d{1,6})?)\\s*([a-z]+)\\.?");
    private static final int DAY = 86_400;

    private TimeText() {}

    /** The seconds; empty where the text is no time with units, no whole number of seconds, or more than a day. */
    public static OptionalInt parse(String text) {
        Matcher part = PART.matcher(text.toLowerCase(Locale.ROOT).strip());
        BigDecimal seconds = BigDecimal.ZERO;
        int from = 0;
        while (part.find(from) && part.start() == from) {
            int unit = secondsOf(part.group(2));
            seconds = seconds.add(new BigDecimal(part.group(1)).multiply(BigDecimal.valueOf(unit)));
            from = unit == 0 ? 0 : part.end();
            if (unit == 0 || from == text.strip().length()) {
                break;
            }
        }
        boolean isRead = from > 0 && from == text.strip().length();
        boolean isWhole = seconds.stripTrailingZeros().scale() <= 0;
        return isRead && isWhole && seconds.compareTo(BigDecimal.valueOf(DAY)) <= 0
                ? OptionalInt.of(seconds.intValueExact())
                : OptionalInt.empty();
    }

    private static int secondsOf(String unit) {
        return switch (unit) {
            case "s", "sec", "secs", "second", "seconds" -> 1;
            case "min", "mins", "minute", "minutes" -> 60;
            case "h", "hr", "hrs", "hour", "hours" -> 3600;
            default -> 0;
        };
    }
}
