package bandwright.pipeline.watch;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A drop as it has been seen.
 *
 * @param arrived when it landed: when it was first seen, or, if it lay there before anybody looked, when it was written
 * @param first the first look at which it was as it is now
 */
record Sighting(Path path, Instant arrived, Look first, Look last) {
    Readiness readiness(Pace pace) {
        return Readiness.of(first, last, pace);
    }

    /**
     * What is known after another look.
     *
     * @param isFirstLook whether nobody has looked before: what lies there may have lain for long
     */
    static SortedMap<Path, Sighting> next(
            Map<Path, Sighting> before, SortedMap<Path, Look> looks, boolean isFirstLook) {
        SortedMap<Path, Sighting> next = new TreeMap<>();
        looks.forEach((path, look) -> {
            Sighting known = before.get(path);
            if (known == null) {
                Instant written = Instant.ofEpochMilli(look.changed());
                Instant arrived = isFirstLook && written.isBefore(look.at()) ? written : look.at();
                next.put(path, new Sighting(path, arrived, look, look));
            } else {
                // A clock that was set back would make it wait for the old time: its looks begin anew.
                boolean isSteady = known.first.isLike(look) && !look.at().isBefore(known.last.at());
                next.put(path, new Sighting(path, known.arrived, isSteady ? known.first : look, look));
            }
        });
        return next;
    }
}
