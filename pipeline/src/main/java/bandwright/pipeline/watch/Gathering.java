package bandwright.pipeline.watch;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Collection;
import java.util.List;

/**
 * Which drops become a run now? Those that are ready, once nothing has landed for the quiet time; with a time of day,
 * those of them that landed before it last struck. What grows without end holds the others up for a while only.
 */
final class Gathering {
    private Gathering() {}

    static List<Sighting> due(Collection<Sighting> all, Instant now, Pace pace, ZoneId zone) {
        List<Sighting> ready = all.stream()
                .filter(one -> one.readiness(pace) == Readiness.READY)
                .filter(one -> hasStruck(one.arrived(), now, pace, zone))
                .toList();
        return ready.isEmpty() || !(isQuiet(all, now, pace) || isOverdue(ready, now, pace, zone)) ? List.of() : ready;
    }

    private static boolean isQuiet(Collection<Sighting> all, Instant now, Pace pace) {
        return all.stream()
                .filter(one -> one.readiness(pace) == Readiness.READY || one.readiness(pace) == Readiness.GROWING)
                .allMatch(one -> since(one.first().at(), now).compareTo(pace.quiet()) >= 0);
    }

    /** Something has been due for so long that it waits for nothing else. */
    private static boolean isOverdue(Collection<Sighting> ready, Instant now, Pace pace, ZoneId zone) {
        Instant struck = pace.at().isEmpty() ? Instant.MIN : last(now, pace, zone);
        return ready.stream()
                .map(one ->
                        one.first().at().isBefore(struck) ? struck : one.first().at())
                .anyMatch(due -> since(due, now).compareTo(Pace.PATIENCE) >= 0);
    }

    private static Duration since(Instant then, Instant now) {
        return Duration.between(then, now);
    }

    private static boolean hasStruck(Instant arrived, Instant now, Pace pace, ZoneId zone) {
        return pace.at().isEmpty() || !last(now, pace, zone).isBefore(arrived);
    }

    /** When the time of day last struck. A day on which the clocks skip it has it an hour later. */
    private static Instant last(Instant now, Pace pace, ZoneId zone) {
        ZonedDateTime today = now.atZone(zone).with(pace.at().orElseThrow());
        return today.toInstant().isAfter(now)
                ? now.atZone(zone).minusDays(1).with(pace.at().orElseThrow()).toInstant()
                : today.toInstant();
    }
}
