package bandwright.rules.designs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A font of the shop's own: a row of fonts.csv.
 *
 * @param path the file beside the tables
 */
public record FontFile(String id, String file, Optional<Path> path, String note) {
    /** The ids of the fonts that come with the program. */
    public static final List<String> BUNDLED = List.of("sans", "sans-bold", "serif", "serif-italic", "mono", "wide");
}
