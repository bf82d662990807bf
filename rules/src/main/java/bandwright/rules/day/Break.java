package bandwright.rules.day;

import java.time.LocalTime;

/** A time of the day at which nobody is at the machines: 12:30-13:00. */
public record Break(LocalTime from, LocalTime to) {
    public Break {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("a break that ends before it begins: " + from + " to " + to);
        }
    }
}
