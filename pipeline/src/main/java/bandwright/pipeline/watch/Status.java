package bandwright.pipeline.watch;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * How it goes at one moment. No buyer's word is in it, only names of files and folders, and counts.
 *
 * @param printer what was not handed to a printer as it should, a line each with its cure, the newest last
 */
record Status(
        Instant at,
        ZoneId zone,
        Optional<Stop> stop,
        Doing doing,
        Collection<Sighting> sightings,
        List<Unplaced> unplaced,
        List<String> printer) {
    enum Doing {
        WATCHING,
        MAKING,
        ENDED
    }

    Status {
        sightings = List.copyOf(sightings);
        unplaced = List.copyOf(unplaced);
        printer = List.copyOf(printer);
    }
}
