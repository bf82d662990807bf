package bandwright.pipeline.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where the pictures are: the folder that is named, else the one called artwork beside the orders.
 *
 * @param named null where the command line names none
 * @param inbox folders of order files, or the files themselves
 */
record ArtworkFolder(@Nullable Path named, List<Path> inbox) {
    ArtworkFolder {
        inbox = List.copyOf(inbox);
    }

    Path path() {
        if (named != null) {
            return named;
        }
        Path first = inbox.isEmpty() ? Path.of(".") : inbox.get(0);
        Path folder = Files.isDirectory(first)
                ? first
                : Optional.ofNullable(first.toAbsolutePath().getParent()).orElse(first);
        return folder.resolve("artwork");
    }
}
