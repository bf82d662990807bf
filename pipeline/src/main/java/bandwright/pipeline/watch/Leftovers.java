package bandwright.pipeline.watch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What lies in not-taken, the last first.
 *
 * @param reasons some of the pages that say why, by their names
 */
record Leftovers(int count, List<String> reasons) {
    static final Leftovers NONE = new Leftovers(0, List.of());
    private static final int SHOWN = 20;

    private record Dated(long written, Path path) {}

    Leftovers {
        reasons = List.copyOf(reasons);
    }

    static Leftovers of(Path notTaken) {
        if (!Files.isDirectory(notTaken, LinkOption.NOFOLLOW_LINKS)) {
            return NONE;
        }
        try (Stream<Path> all = Files.list(notTaken)) {
            List<Path> reasons = all.filter(path -> Glance.name(path).endsWith(PutAway.REASON))
                    .map(path -> new Dated(written(path), path))
                    .sorted(Comparator.comparing(Dated::written).reversed().thenComparing(Dated::path))
                    .map(Dated::path)
                    .toList();
            return new Leftovers(
                    reasons.size(),
                    reasons.stream().limit(SHOWN).map(Glance::name).toList());
        } catch (IOException | UncheckedIOException e) {
            return NONE;
        }
    }

    private static long written(Path file) {
        try {
            return Files.getLastModifiedTime(file).toMillis();
        } catch (IOException e) {
            return 0;
        }
    }
}
