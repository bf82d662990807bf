package bandwright.pipeline.watch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The gift shop's drop folder, watched by a clock that a test drives. */
final class DropStall implements AutoCloseable {
    private static final Path ARTWORK = Path.of("..", "inbox-sample", "artwork");

    final Path inbox;
    final Path outbox;
    final Path tables;
    final List<String> said = new ArrayList<>();
    Instant now = Instant.parse("2026-03-02T09:00:00Z");
    private Watch watch;

    DropStall(Path folder) throws IOException {
        inbox = Files.createDirectories(folder.resolve("inbox"));
        outbox = Files.createDirectories(folder.resolve("outbox"));
        tables = Files.createDirectories(folder.resolve("tables"));
        watch = watch(Optional.empty(), Optional.of(ARTWORK));
    }

    private Watch watch(Optional<LocalTime> at, Optional<Path> artwork) {
        Pace pace = new Pace(Duration.ofSeconds(5), Duration.ofSeconds(10), at);
        Asked asked = new Asked(inbox, outbox, Optional.of(tables), artwork, Optional.empty(), false, pace);
        Told told = new Told(
                said::add,
                ended -> said.add("run " + ended.folder().orElseThrow().getFileName()),
                handed -> said.add(handed.line()));
        return new Watch(asked, () -> now, ZoneId.of("UTC"), told);
    }

    /** The computer is switched off and on again. */
    void restart() {
        watch.close();
        watch = watch(Optional.empty(), Optional.of(ARTWORK));
    }

    /** The same, with runs at a time of day. */
    void restartAt(LocalTime time) {
        watch.close();
        watch = watch(Optional.of(time), Optional.of(ARTWORK));
    }

    /** The same, with no artwork folder named. */
    void restartWithoutArtwork() {
        watch.close();
        watch = watch(Optional.empty(), Optional.empty());
    }

    Path drop(String name, String... rows) throws IOException {
        return Files.writeString(inbox.resolve(name), String.join("\n", rows) + "\n");
    }

    /** One look, five seconds after the last. */
    void look() {
        now = now.plusSeconds(5);
        watch.look();
    }

    /** Long enough for everything that has landed to be taken. */
    void looks() {
        for (int i = 0; i < 4; i++) {
            look();
        }
    }

    void wait(Duration time) {
        now = now.plus(time);
    }

    String status() throws IOException {
        return Files.readString(outbox.resolve("status.html"));
    }

    static List<String> names(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    List<String> runs() throws IOException {
        return names(outbox).stream().filter(name -> name.startsWith("2026")).toList();
    }

    @Override
    public void close() {
        watch.close();
    }
}
