package bandwright.pipeline.intake.format;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;

/**
 * Which day a spreadsheet's number is: 35981 is 1998-07-05, or 34519 where days count from 1904 (ECMA-376 Part 1,
 * 18.17.4.1). In the 1900 system day 60 is a 29 February 1900 that never was, kept for the sake of old files; so the
 * numbers before it count from one day later than those after it.
 */
final class Serials {
    private static final LocalDate ZERO_1904 = LocalDate.of(1904, 1, 1);
    private static final LocalDate ZERO_1900_LATE = LocalDate.of(1899, 12, 30);
    private static final LocalDate ZERO_1900_EARLY = LocalDate.of(1899, 12, 31);
    private static final int NO_DAY = 60;
    private static final int DAY_SECONDS = 86_400;
    private static final LocalDate LAST = LocalDate.of(9999, 12, 31);

    private final boolean from1904;

    Serials(boolean from1904) {
        this.from1904 = from1904;
    }

    /** The day and the time to the second; empty where the number is no day. */
    Optional<LocalDateTime> find(double serial) {
        if (!(serial >= 0 && serial < 3_000_000)) {
            return Optional.empty();
        }
        long seconds = Math.round(serial * DAY_SECONDS);
        long day = seconds / DAY_SECONDS;
        LocalTime time = LocalTime.ofSecondOfDay(seconds % DAY_SECONDS);
        return findDay(day).map(date -> date.atTime(time));
    }

    private Optional<LocalDate> findDay(long day) {
        LocalDate date;
        if (from1904) {
            date = ZERO_1904.plusDays(day);
        } else if (day == 0 || day == NO_DAY) {
            return Optional.empty();
        } else {
            date = (day < NO_DAY ? ZERO_1900_EARLY : ZERO_1900_LATE).plusDays(day);
        }
        return date.isAfter(LAST) ? Optional.empty() : Optional.of(date);
    }
}
