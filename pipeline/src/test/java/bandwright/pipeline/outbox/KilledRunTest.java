package bandwright.pipeline.outbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bandwright.pipeline.RunId;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pulls the plug at several moments of a run in a process of its own. */
class KilledRunTest {
    @TempDir
    Path outbox;

    @ParameterizedTest
    @ValueSource(strings = {"opened", "run.json", "sheets/a4-01.pdf", "sheets/a4-02.pdf", "read back"})
    void killedBeforeTheRenameTheRunIsNotThereAndTheNextCleansUp(String moment) throws Exception {
        kill(start(moment));

        assertThat(outbox.resolve(KilledRun.ID.toString())).doesNotExist();
        try (Outbox next = open()) {
            assertThat(names()).containsExactly("ledger.lock");
            assertThat(next.nextRun(KilledRun.ID.date(), 0)).isEqualTo(KilledRun.ID);
        }
    }

    @Test
    void killedAfterTheRenameTheRunIsThereWhole() throws Exception {
        kill(start("published"));

        for (String file : KilledRun.FILES) {
            assertThat(outbox.resolve(KilledRun.ID.toString()).resolve(file)).hasSize(KilledRun.BYTES);
        }
        try (Outbox next = open()) {
            assertThat(next.nextRun(KilledRun.ID.date(), 0)).isEqualTo(new RunId(KilledRun.ID.date(), 2));
            assertThat(names()).containsExactly("2026-03-02-1", "ledger.lock");
        }
    }

    @Test
    void aRunOfAnotherProcessIsWaitedForAndItsFolderLeftAlone() throws Exception {
        Process other = start("sheets/a4-01.pdf");

        assertThatThrownBy(this::open).isInstanceOf(OutboxFault.class).hasMessageContaining("Another run");
        assertThat(names()).containsExactly(".making-2026-03-02-1", "ledger.lock");
        kill(other);
        open().close();
    }

    @Test
    void aRefusedSecondRunDoesNotFreeTheLockOfTheFirst() throws Exception {
        try (Outbox first = open()) {
            assertThatThrownBy(this::open).isInstanceOf(OutboxFault.class);

            Process other = process("opened", "2");
            assertThat(other.waitFor()).isNotZero();
            assertThat(first.nextRun(KilledRun.ID.date(), 0)).isEqualTo(KilledRun.ID);
        }
    }

    private Outbox open() {
        return Outbox.open(outbox, 1, line -> {});
    }

    private Process start(String moment) throws IOException {
        Process process = process(moment, "50");
        BufferedReader said = process.inputReader();
        assertThat(said.readLine()).isEqualTo("at " + moment);
        return process;
    }

    private Process process(String moment, String tries) throws IOException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        String classes = System.getProperty("java.class.path");
        return new ProcessBuilder(
                        java.toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        classes,
                        KilledRun.class.getName(),
                        outbox.toString(),
                        moment,
                        tries)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static void kill(Process process) throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(outbox)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
