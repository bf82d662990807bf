package bandwright.pipeline.watch;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** How it goes at one moment. No buyer's word is in it, only names of files and folders, and counts. */
record Status(
        Instant at,
        ZoneId zone,
        Optional<Stop> stop,
        boolean isEnded,
        Collection<Sighting> sightings,
        List<Unplaced> unplaced) {
    Status {
        sightings = List.copyOf(sightings);
        unplaced = List.copyOf(unplaced);
    }
}
