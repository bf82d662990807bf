package bandwright.rules.heat;

import bandwright.rules.units.Temperature;
import java.util.Comparator;
import java.util.Optional;

/**
 * One blank pressed to find its setting.
 *
 * @param number as it stands on the pressed piece
 * @param temperature empty = the best of the tries before
 */
public record Try(int number, Optional<Temperature> temperature, int seconds) {
    /**
     * The order in which a machine waits least: it only ever heats up, and heats up no further than it must. What is
     * equally hot goes by time, the shortest first.
     */
    static final Comparator<Try> LEAST_WAITING = Comparator.comparing(
                    (Try one) -> one.temperature().map(Temperature::celsius).orElse(Double.MAX_VALUE))
            .thenComparing(Try::seconds);

    Try numbered(int other) {
        return new Try(other, temperature, seconds);
    }
}
