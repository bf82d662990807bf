package bandwright.pipeline.watch;

import bandwright.rules.Rulebook;
import bandwright.rules.paper.Paper;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a watcher is asked for.
 *
 * @param isPrinted whether sheets are handed to a printer
 * @param artwork the folder that is named; empty = artwork in the inbox, or a dropped folder's own
 */
public record Asked(
        Path inbox,
        Path outbox,
        Optional<Path> rules,
        Optional<Path> artwork,
        Optional<String> paper,
        boolean isPrinted,
        Pace pace) {
    Path artworkFolder() {
        return artwork.orElseGet(() -> inbox.resolve("artwork"));
    }

    /** The paper as the rulebook of now names it. */
    Optional<String> paperOf(Rulebook now) throws Stop {
        if (paper.isEmpty()) {
            return paper;
        }
        Optional<String> id = now.papers().find(paper.get()).map(Paper::id);
        boolean isTaken = id.isPresent()
                && now.printers().list().stream()
                        .anyMatch(printer -> printer.papers().contains(id.get()));
        if (!isTaken) {
            throw Stop.of("no-paper", paper.get());
        }
        return id;
    }

    /** Folders that may lie in the inbox and are no drops. */
    List<Path> reserved() {
        return Stream.of(Optional.of(outbox), rules, Optional.of(artworkFolder()))
                .flatMap(Optional::stream)
                .map(path -> path.toAbsolutePath().normalize())
                .toList();
    }
}
