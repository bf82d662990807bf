package bandwright.pipeline.outbox;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Deletes a folder and what is in it. A link in it is deleted; what it leads to stays. */
final class Tree {
    private Tree() {}

    static void delete(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            // The deepest first: a folder must be empty before it goes.
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
