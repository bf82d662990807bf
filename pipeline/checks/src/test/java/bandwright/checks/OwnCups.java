package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** A CUPS scheduler of our own, in a folder and behind a socket of its own, whose queues print into files. */
final class OwnCups implements AutoCloseable {
    private static final int TRIES = 300;
    private static final int MILLISECONDS_BETWEEN_TRIES = 100;

    private final Path folder;
    private final Process scheduler;

    private OwnCups(Path folder, Process scheduler) {
        this.folder = folder;
        this.scheduler = scheduler;
    }

    /** Skips the test, and says why, where there is none to start. */
    static OwnCups start(Path folder) throws Exception {
        assumeTrue(Programs.has("cupsd") && Programs.has("lp"), "CUPS isn't installed (cupsd, lp)");
        assumeTrue(Programs.run("id", "-u").strip().equals("0"), "only root may start a CUPS of its own");
        // The filters run as another user.
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        for (String name : List.of("root/ppd", "spool/tmp", "cache", "run", "log", "out")) {
            Files.createDirectories(folder.resolve(name));
        }
        Path conf = Files.writeString(folder.resolve("cupsd.conf"), """
                Listen %s/run/cups.sock
                Browsing No
                WebInterface No
                DefaultAuthType None
                <Location />
                  Order allow,deny
                  Allow all
                </Location>
                <Location /admin>
                  Order allow,deny
                  Allow all
                </Location>
                <Policy default>
                  <Limit All>
                    Order allow,deny
                    Allow all
                  </Limit>
                </Policy>
                """.formatted(folder));
        Path files = Files.writeString(folder.resolve("cups-files.conf"), """
                FileDevice Yes
                ServerRoot %1$s/root
                RequestRoot %1$s/spool
                TempDir %1$s/spool/tmp
                CacheDir %1$s/cache
                StateDir %1$s/run
                Printcap %1$s/run/printcap
                AccessLog %1$s/log/access
                ErrorLog %1$s/log/error
                PageLog %1$s/log/page
                SystemGroup root
                """.formatted(folder));
        Process scheduler = new ProcessBuilder("cupsd", "-f", "-c", conf.toString(), "-s", files.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log/scheduler").toFile())
                .start();
        OwnCups cups = new OwnCups(folder, scheduler);
        cups.await("the scheduler's socket", () -> Files.exists(folder.resolve("run/cups.sock")));
        return cups;
    }

    /** By this the programs of CUPS find it. */
    Map<String, String> environment() {
        return Map.of("CUPS_SERVER", folder.resolve("run/cups.sock").toString());
    }

    /** A queue for that description of a printer, with these settings; the file that it prints into. */
    Path queue(String name, String description, String... settings) throws Exception {
        Path file = folder.resolve("out").resolve(name);
        Path ppd = Files.writeString(folder.resolve(name + ".ppd"), description);
        List<String> command =
                new ArrayList<>(List.of("lpadmin", "-p", name, "-E", "-v", "file:" + file, "-P", ppd.toString()));
        for (String setting : settings) {
            command.addAll(List.of("-o", setting));
        }
        run(command.toArray(String[]::new));
        return file;
    }

    void run(String... command) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(
                        folder.resolve("log/programs").toFile()));
        builder.environment().putAll(environment());
        assertThat(builder.start().waitFor()).as(String.join(" ", command)).isZero();
    }

    /** The jobs that were ever given to a queue. */
    List<String> jobs(String queue) throws Exception {
        return jobs("all", queue);
    }

    /** What was printed, once every job of the queue is done. */
    Path printed(String queue) throws Exception {
        await("the jobs of " + queue, () -> jobs("not-completed", queue).isEmpty());
        Path file = folder.resolve("out").resolve(queue);
        assertThat(file).as("printed by %s", queue).isNotEmptyFile();
        return file;
    }

    private List<String> jobs(String which, String queue) throws Exception {
        ProcessBuilder builder = new ProcessBuilder("lpstat", "-W", which, "-o", queue);
        builder.environment().putAll(environment());
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        return said.lines().toList();
    }

    /** Something that comes to be in its own time. */
    @FunctionalInterface
    private interface Coming {
        boolean isThere() throws Exception;
    }

    private void await(String what, Coming coming) throws Exception {
        for (int tried = 0; tried < TRIES; tried++) {
            if (coming.isThere()) {
                return;
            }
            assertThat(scheduler.isAlive()).as("the scheduler").isTrue();
            Thread.sleep(MILLISECONDS_BETWEEN_TRIES);
        }
        throw new AssertionError("still not there: " + what);
    }

    @Override
    public void close() {
        scheduler.destroy();
        try {
            if (!scheduler.waitFor(10, TimeUnit.SECONDS)) {
                scheduler.destroyForcibly();
            }
        } catch (InterruptedException e) {
            scheduler.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
