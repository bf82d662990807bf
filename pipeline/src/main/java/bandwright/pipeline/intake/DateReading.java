package bandwright.pipeline.intake;

import bandwright.rules.orders.DateOrder;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The days that a cell can mean. "13/04/2026" is one day everywhere; "02/03/2026" is one only for a site with a
 * date_order, and else two: then a person must say which.
 *
 * @param isUnclear whether the cell says something, but not one day
 */
record DateReading(boolean isUnclear, NavigableSet<LocalDate> readings) {
    DateReading {
        readings = Collections.unmodifiableNavigableSet(new TreeSet<>(readings));
    }

    static DateReading of(LocalDate day) {
        return new DateReading(false, new TreeSet<>(List.of(day)));
    }

    static DateReading parse(String text, Optional<DateOrder> order) {
        if (text.isEmpty()) {
            return new DateReading(false, new TreeSet<>());
        }
        NavigableSet<LocalDate> days = DateText.readings(text, order);
        if (days.isEmpty() && order.isPresent()) { // the site writes otherwise than its row of sites.csv says
            return new DateReading(true, DateText.readings(text, Optional.empty()));
        }
        return new DateReading(days.size() != 1, days);
    }

    Optional<LocalDate> day() {
        return isUnclear || readings.isEmpty() ? Optional.empty() : Optional.of(readings.first());
    }
}
