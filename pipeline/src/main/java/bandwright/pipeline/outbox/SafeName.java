package bandwright.pipeline.outbox;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The one door from a file's name to a place in the run's folder: sheets/letter-01.pdf passes; ../ledger.db, /etc/hosts,
 * C:x and what some system cannot store do not. Writers make names from what strangers typed, so a name that does not
 * pass is our own mistake.
 */
final class SafeName {
    private static final Pattern PART = Pattern.compile("[^/\\\\:*?\"<>|\\p{Cntrl}]*[^/\\\\:*?\"<>|\\p{Cntrl}. ]");

    private SafeName() {}

    static Path resolve(Path folder, String name) {
        Path place = folder;
        for (String part : List.of(name.split("/", -1))) {
            if (!PART.matcher(part).matches()) {
                throw new IllegalArgumentException("not a name for a file of a run: \"" + name + "\"");
            }
            place = place.resolve(part);
        }
        return place;
    }
}
