package bandwright.rules.heat;

import bandwright.rules.units.Temperature;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Between which figures a row of press-settings.csv stands: 180 to 200 C and 150 to 240 s. Empty where the row doesn't
 * say.
 */
public record UsualRange(
        Optional<Temperature> leastTemperature,
        Optional<Temperature> mostTemperature,
        OptionalInt leastSeconds,
        OptionalInt mostSeconds) {
    /** Nothing but the figure itself. */
    public static final UsualRange NOT_SAID =
            new UsualRange(Optional.empty(), Optional.empty(), OptionalInt.empty(), OptionalInt.empty());
}
