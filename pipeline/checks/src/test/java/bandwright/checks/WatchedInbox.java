package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A watcher as a process of its own over an inbox on the disk, and what it left there. */
final class WatchedInbox {
    static final String HEADER = "Order,SKU,Design,Qty\n";
    /** Far longer than any of it takes: only a watcher that does nothing waits so long. */
    private static final int MOST_SECONDS = 120;

    final Path inbox;
    final Path outbox;
    private final Path log;

    WatchedInbox(Path folder) throws IOException {
        this(folder, folder.resolve("outbox"));
    }

    WatchedInbox(Path folder, Path outbox) throws IOException {
        inbox = Files.createDirectories(folder.resolve("inbox"));
        this.outbox = outbox;
        log = folder.resolve("log");
    }

    Process start(String... more) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true"));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "bandwright.pipeline.cli.Main"));
        command.addAll(List.of("watch", inbox.toString(), "--out", outbox.toString(), "--poll", "1s", "--quiet", "1s"));
        command.addAll(List.of("--artwork", WholeRun.SAMPLE.resolve("artwork").toString()));
        command.addAll(List.of(more));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()));
        return builder.start();
    }

    /** Asks it to stop as systems do, and waits for its end. */
    static int stop(Process watcher) throws InterruptedException {
        watcher.destroy(); // SIGTERM where there are signals
        return watcher.waitFor();
    }

    Path drop(String name, String order) throws IOException {
        return Files.writeString(inbox.resolve(name), HEADER + order + ",COAST-S,lamp,1\n");
    }

    /** Something that comes to be sooner or later. */
    @FunctionalInterface
    interface Sooner {
        boolean orLater() throws IOException;
    }

    void await(String what, Sooner or) throws IOException, InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_SECONDS);
        while (!or.orLater()) {
            assertThat(System.nanoTime())
                    .as("waiting for: " + what + "; it said: " + said())
                    .isLessThan(end);
            Thread.sleep(50);
        }
    }

    String said() throws IOException {
        return Files.exists(log) ? Files.readString(log, StandardCharsets.UTF_8) : "";
    }

    String status() throws IOException {
        Path status = outbox.resolve("status.html");
        return Files.exists(status) ? Files.readString(status, StandardCharsets.UTF_8) : "";
    }

    /** Names of the runs. */
    List<String> runs() throws IOException {
        return names(outbox).stream().filter(name -> name.matches("\\d{4}-.*")).toList();
    }

    /** Every file below done, by its own name. */
    List<String> done() throws IOException {
        Path done = inbox.resolve("done");
        if (!Files.isDirectory(done)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(done)) {
            return all.filter(Files::isRegularFile)
                    .map(path -> path.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    static List<String> names(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
