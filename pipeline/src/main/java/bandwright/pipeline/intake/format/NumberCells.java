package bandwright.pipeline.intake.format;

import bandwright.pipeline.rows.Cell;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/**
 * Makes cells of numbers as a person sees them: 1000123.0 is "1000123", in a date's format a day, and one of over 15
 * digits is damaged.
 */
final class NumberCells {
    private static final DateTimeFormatter DAY_AND_TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);
    /** No number is longer; what is, is no number. */
    private static final int NUMBER_CHARACTERS = 100;

    private final Serials serials;
    private final Cells cells;

    NumberCells(Serials serials, Cells cells) {
        this.serials = serials;
        this.cells = cells;
    }

    Cell of(String text, NumberFormat format, int row) throws Unreadable {
        double value = parse(text);
        return Double.isFinite(value) ? of(value, format, row) : cells.of(text, row);
    }

    /** Not a number where the text is none. */
    static double parse(String text) {
        try {
            return text.length() > NUMBER_CHARACTERS ? Double.NaN : Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    Cell of(double value, NumberFormat format, int row) throws Unreadable {
        if (format.isDate()) {
            return day(value, row);
        }
        String shown = format.shown(value);
        return NumberFormat.isDamaged(value)
                ? cells.keep(new Cell(shown, Optional.empty(), true))
                : cells.of(shown, row);
    }

    private Cell day(double value, int row) throws Unreadable {
        Optional<LocalDateTime> moment = serials.find(value);
        return moment.isPresent() ? moment(moment.get()) : cells.of(NumberFormat.GENERAL.shown(value), row);
    }

    Cell moment(LocalDateTime moment) throws Unreadable {
        LocalDate day = moment.toLocalDate();
        boolean midnight = moment.toLocalTime().equals(LocalTime.MIDNIGHT);
        String text = midnight ? day.toString() : moment.format(DAY_AND_TIME);
        return cells.keep(new Cell(text, Optional.of(day), false));
    }
}
