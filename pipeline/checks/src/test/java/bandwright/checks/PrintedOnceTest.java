package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The process is killed round the moment at which the system takes a job. No sheet is ever given to the system twice, and
 * one that may not have got there is told of.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "a shell script plays lp")
final class PrintedOnceTest {
    private static final int MOMENTS = 5;
    private static final int NEEDS_A_PERSON = 3;

    @TempDir
    private Path folder;

    private Path orders;

    @BeforeEach
    void ordersOfTheRowingClub() throws Exception {
        orders = Files.writeString(folder.resolve("orders.csv"), "Order,SKU,Design,Qty\nQ1,COAST-S,lamp,2\n");
        Files.createDirectory(folder.resolve("bin"));
    }

    @Test
    void killedBetweenTheSystemsYesAndTheLedgersEntryAPersonIsToldToLook() throws Exception {
        lp("echo 'request id is desk-7 (1 file(s))'", "kill -9 $PPID", "sleep 1");
        assertThat(run("outbox").waitFor()).isGreaterThan(NEEDS_A_PERSON);
        assertThat(titles()).containsExactly("2026-03-02-1 letter-01.pdf");

        lp("echo 'request id is desk-8 (1 file(s))'");
        assertThat(run("outbox").waitFor()).isEqualTo(NEEDS_A_PERSON);
        assertThat(said()).contains("letter-01.pdf may or may not be printed", "lpstat -W all -o", "by hand");
        assertThat(run("outbox").waitFor()).as("told once").isZero();
        assertThat(titles()).as("given to the system once").hasSize(1);
    }

    @Test
    void aDryRunGivesNothingAway() throws Exception {
        lp("exit 0");
        assertThat(run("outbox", "--dry-run").waitFor()).isZero();
        assertThat(titles()).isEmpty();
        assertThat(folder.resolve("outbox")).doesNotExist();
    }

    @Test
    void aRefusalDoesNotUndoTheRun() throws Exception {
        lp("echo 'lp: The printer or class does not exist.' >&2", "exit 1");
        assertThat(run("outbox").waitFor()).isEqualTo(NEEDS_A_PERSON);
        assertThat(said()).contains("was not printed", "does not exist", "by hand");
        assertThat(folder.resolve("outbox/2026-03-02-1/sheets/letter-01.pdf")).isNotEmptyFile();
    }

    @Test
    void killedAnywhereNoSheetIsGivenToTheSystemTwice() throws Exception {
        lp("sleep 0.3", "echo 'request id is desk-7 (1 file(s))'");
        long begun = System.nanoTime();
        assertThat(run("whole").waitFor()).isZero();
        long whole = System.nanoTime() - begun;
        for (int moment = 1; moment <= MOMENTS; moment++) {
            Files.deleteIfExists(folder.resolve("titles"));
            String outbox = "outbox-" + moment;
            Process killed = run(outbox);
            // The second half, as little of the first is about printing.
            killed.waitFor(whole * (MOMENTS + moment) / (2 * MOMENTS), TimeUnit.NANOSECONDS);
            killed.destroyForcibly().waitFor();

            int exit = run(outbox).waitFor();
            boolean isTold = said().contains("letter-01.pdf");
            assertThat(titles().size()).as("moment %d: %s", moment, said()).isLessThanOrEqualTo(1);
            assertThat(titles().size() == 1 || (isTold && exit == NEEDS_A_PERSON))
                    .as("moment %d: printed or told", moment)
                    .isTrue();
        }
    }

    /** A program in lp's place that writes down the job's title, then does this. */
    private void lp(String... then) throws Exception {
        List<String> lines = new ArrayList<>(List.of(
                "#!/bin/sh",
                "while [ \"$1\" != -t ]; do shift; done",
                "printf '%s\\n' \"$2\" >> '" + folder.resolve("titles") + "'"));
        lines.addAll(List.of(then));
        Path program = Files.write(folder.resolve("bin/lp"), lines);
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private List<String> titles() throws Exception {
        Path titles = folder.resolve("titles");
        return Files.exists(titles) ? Files.readAllLines(titles) : List.of();
    }

    private String said() throws Exception {
        return Files.readString(folder.resolve("said"), StandardCharsets.UTF_8);
    }

    private Process run(String outbox, String... more) throws Exception {
        List<String> words = new ArrayList<>(List.of(
                "run",
                orders.toString(),
                "--artwork",
                WholeRun.SAMPLE.resolve("artwork").toString(),
                "--out",
                folder.resolve(outbox).toString(),
                "--date",
                "2026-03-02",
                "--print"));
        words.addAll(List.of(more));
        String path = folder.resolve("bin") + File.pathSeparator + System.getenv("PATH");
        return WholeRun.start(
                List.of("-XX:TieredStopAtLevel=1"),
                Map.of("PATH", path),
                ProcessBuilder.Redirect.to(folder.resolve("said").toFile()),
                words.toArray(String[]::new));
    }
}
