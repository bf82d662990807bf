package bandwright.pipeline.watch;

import java.time.Duration;
import java.time.LocalTime;
import java.util.Optional;

/**
 * How often is looked, and how long is waited.
 *
 * @param looks the time between two looks
 * @param quiet how long nothing must have landed before a run begins: what lands together becomes one run
 * @param at the time of day at which runs begin; empty = whenever it is quiet
 */
public record Pace(Duration looks, Duration quiet, Optional<LocalTime> at) {
    /**
     * How long something incomplete may lie before a person is told: longer than a copy over a slow line pauses, shorter
     * than a coffee [our judgement].
     */
    static final Duration PATIENCE = Duration.ofMinutes(10);

    public Pace {
        if (looks.isNegative() || looks.isZero() || quiet.isNegative()) {
            throw new IllegalArgumentException("looks every " + looks + ", quiet " + quiet);
        }
    }
}
