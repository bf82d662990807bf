package bandwright.pipeline.outbox;

import bandwright.pipeline.RunId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How folders of an outbox are named. 2026-03-02-3 is the third run of that day; .making-2026-03-02-3 is that run while
 * it is written.
 */
final class RunNames {
    private static final Pattern RUN = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})-([1-9]\\d{0,8})");
    private static final String SCRATCH = ".making-scratch";
    private static final Pattern MAKING = Pattern.compile("\\.making-(scratch|" + RUN.pattern() + ")");

    private RunNames() {}

    static String making(RunId id) {
        return ".making-" + id;
    }

    /** Where a run that is written keeps what none of its files is. */
    static Path scratch(Path outbox) {
        return outbox.resolve(SCRATCH);
    }

    /** Whether this is what a killed run left: a folder of that name, not a link to one. */
    static boolean isMaking(Path path) {
        return MAKING.matcher(path.getFileName().toString()).matches()
                && Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
    }

    /** The highest number of that date; 0 if there is none. */
    static int highest(Path outbox, LocalDate date) throws IOException {
        return list(outbox).stream()
                .flatMapToInt(path -> numberOn(date, path).stream())
                .max()
                .orElse(0);
    }

    private static OptionalInt numberOn(LocalDate date, Path path) {
        Matcher name = RUN.matcher(path.getFileName().toString());
        return name.matches() && name.group(1).equals(date.toString())
                ? OptionalInt.of(Integer.parseInt(name.group(2)))
                : OptionalInt.empty();
    }

    /** The folders of runs by day and number, the newest first. */
    static List<Path> newestFirst(Path outbox) throws IOException {
        return list(outbox).stream()
                .filter(path -> RUN.matcher(path.getFileName().toString()).matches())
                .filter(path -> Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
                .sorted(Comparator.comparing(RunNames::day)
                        .thenComparing(RunNames::number)
                        .reversed())
                .toList();
    }

    private static String day(Path run) {
        String name = run.getFileName().toString();
        return name.substring(0, name.lastIndexOf('-'));
    }

    private static int number(Path run) {
        String name = run.getFileName().toString();
        return Integer.parseInt(name.substring(name.lastIndexOf('-') + 1));
    }

    static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }
}
