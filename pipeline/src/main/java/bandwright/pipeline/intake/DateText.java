package bandwright.pipeline.intake;

import bandwright.rules.orders.DateOrder;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads days as people and shops write them: {@code 2026-03-02}, {@code 2026-03-02T14:05:00Z} (ISO 8601),
 * {@code 2 March 2026}, {@code Mon, Mar 2nd, 2026}, {@code 02-Mar-26}, {@code 02/03/2026 14:05}. The time of day and
 * its zone are left out: the day is the one that the site wrote. Years of two digits are of this century.
 */
final class DateText {
    private static final int LONGEST = 60;

    private static final Pattern TIME = Pattern.compile(
            "(?:[ ,]+|(?<=\\d)[tT])(?:at )?\\d{1,2}:\\d{2}(?::\\d{2}(?:[.,]\\d{1,9})?)? ?(?:[apAP][.]?[mM][.]?)?"
                    + " ?(?:[zZ]|[uU][tT][cC]|[gG][mM][tT]|[+-]\\d{2}:?\\d{2})?$");
    private static final Pattern WEEKDAY =
            Pattern.compile("^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[., ]+", Pattern.CASE_INSENSITIVE);
    private static final String GAP = "[ ./,-]{1,3}";
    private static final String NUMBER = "(\\d{1,2})(?:st|nd|rd|th)?";
    private static final String YEAR = "(\\d{4}|\\d{2})";
    private static final String MONTH = "([a-z]{3,9})";

    private static final Pattern DAY_MONTH = pattern(NUMBER + GAP + "(?:of )?" + MONTH + GAP + YEAR);
    private static final Pattern MONTH_DAY = pattern(MONTH + GAP + NUMBER + GAP + YEAR);
    private static final Pattern YEAR_MONTH = pattern("(\\d{4})" + GAP + MONTH + GAP + NUMBER);
    private static final Pattern YEAR_FIRST = pattern("(\\d{4})[-/. ](\\d{1,2})[-/. ](\\d{1,2})[.]?");
    private static final Pattern BASIC = pattern("(\\d{4})(\\d{2})(\\d{2})");
    private static final Pattern DIGITS = pattern("(\\d{1,2})[-/. ]{1,2}(\\d{1,2})[-/. ]{1,2}" + YEAR + "[.]?");

    private static final List<String> MONTHS = List.of(
            "january",
            "february",
            "march",
            "april",
            "may",
            "june",
            "july",
            "august",
            "september",
            "october",
            "november",
            "december");

    private DateText() {}

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }

    /** Every day that the text can mean; none where it is no date, or not one in the site's own order. */
    static NavigableSet<LocalDate> readings(String text, Optional<DateOrder> order) {
        NavigableSet<LocalDate> days = new TreeSet<>();
        if (text.length() > LONGEST) {
            return days;
        }
        String spaced = text.replaceAll("[\\h\\v]+", " ").strip();
        String bare = WEEKDAY.matcher(TIME.matcher(spaced).replaceFirst(""))
                .replaceFirst("")
                .strip();
        if (certain(bare, days)) {
            return days;
        }
        Matcher digits = DIGITS.matcher(bare);
        if (digits.matches()) {
            List<DateOrder> orders = order.map(List::of).orElse(List.of(DateOrder.values()));
            orders.forEach(each -> byDigits(digits, each).ifPresent(days::add));
        }
        return days;
    }

    /** Forms whose parts can't be taken for one another; true where the text has such a form. */
    private static boolean certain(String text, NavigableSet<LocalDate> days) {
        return named(DAY_MONTH.matcher(text), 3, 2, 1, days)
                || named(MONTH_DAY.matcher(text), 3, 1, 2, days)
                || named(YEAR_MONTH.matcher(text), 1, 2, 3, days)
                || named(YEAR_FIRST.matcher(text), 1, 2, 3, days)
                || named(BASIC.matcher(text), 1, 2, 3, days);
    }

    private static boolean named(Matcher form, int year, int month, int day, NavigableSet<LocalDate> days) {
        if (!form.matches()) {
            return false;
        }
        find(year(form.group(year)), month(form.group(month)), Integer.parseInt(form.group(day)))
                .ifPresent(days::add);
        return true;
    }

    private static Optional<LocalDate> byDigits(Matcher digits, DateOrder order) {
        int first = Integer.parseInt(digits.group(1));
        int second = Integer.parseInt(digits.group(2));
        String third = digits.group(3);
        return switch (order) {
            case DMY -> find(year(third), second, first);
            case MDY -> find(year(third), first, second);
            case YMD ->
                third.length() == 4 ? Optional.empty() : find(year(digits.group(1)), second, Integer.parseInt(third));
        };
    }

    /** A year of two digits is of this century; of one digit it is none. */
    private static int year(String digits) {
        int year = Integer.parseInt(digits);
        return digits.length() == 2 ? 2000 + year : digits.length() == 4 ? year : 0;
    }

    private static int month(String text) {
        if (Character.isDigit(text.charAt(0))) {
            return Integer.parseInt(text);
        }
        String name = text.toLowerCase(Locale.ROOT);
        for (int i = 0; i < MONTHS.size(); i++) {
            boolean isShort = name.equals("sept") || name.length() == 3;
            if (isShort ? MONTHS.get(i).startsWith(name) : MONTHS.get(i).equals(name)) {
                return i + 1;
            }
        }
        return 0;
    }

    private static Optional<LocalDate> find(int year, int month, int day) {
        try {
            return year < 1900 ? Optional.empty() : Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
