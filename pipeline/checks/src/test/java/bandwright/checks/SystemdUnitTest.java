package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The unit of docs/services, with a shop's own folders in it: systemd finds nothing to say, and its command works. */
final class SystemdUnitTest {
    private static final Path UNIT = Path.of("..", "..", "docs", "services", "bandwright-watch.service");

    @TempDir
    private Path folder;

    private String unit = "";

    @BeforeEach
    void aShopsOwnFolders() throws Exception {
        Path launcher = folder.resolve("bandwright");
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Files.writeString(
                launcher,
                "#!/bin/sh\nexec '" + java + "' $BANDWRIGHT_JAVA_OPTS -cp '" + System.getProperty("java.class.path")
                        + "' bandwright.pipeline.cli.Main \"$@\"\n");
        assertThat(launcher.toFile().setExecutable(true)).isTrue();
        unit = Files.readString(UNIT)
                .replace("/opt/bandwright/pipeline/bandwright", launcher.toString())
                .replace("/srv/shop", folder.toString())
                .replace("User=shop", "User=" + System.getProperty("user.name"));
    }

    @Test
    void systemdHasNothingToSay() throws Exception {
        assumeTrue(Programs.has("systemd-analyze"), "needs systemd-analyze");
        Path file = Files.writeString(folder.resolve("bandwright-watch.service"), unit);
        Process verify = new ProcessBuilder("systemd-analyze", "verify", file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(verify.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(said.lines().filter(line -> line.contains("bandwright-watch")))
                .isEmpty();
        assertThat(verify.waitFor()).as(said).isZero();
    }

    @Test
    void itsCommandWatchesAndStopsWell() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "needs a POSIX shell");
        WatchedInbox shop = new WatchedInbox(folder);
        ProcessBuilder command = new ProcessBuilder("/bin/sh", "-c", "exec " + line("ExecStart"));
        String[] setting = line("Environment").split("=", 2);
        command.environment().put(setting[0], setting[1]);
        Process service = command.redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
        try {
            shop.await("the watcher", () -> shop.status().contains("is being watched"));
            assertThat(line("KillSignal")).isEqualTo("SIGTERM");
            service.destroy();
            assertThat(service.waitFor()).isZero();
            assertThat(shop.status()).contains("Nobody is watching");
        } finally {
            service.destroyForcibly().waitFor();
        }
    }

    private String line(String key) {
        Matcher line = Pattern.compile("(?m)^" + key + "=(.*)$").matcher(unit);
        assertThat(line.find()).as(key).isTrue();
        return line.group(1);
    }
}
