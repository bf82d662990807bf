package bandwright.checks.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bandwright.checks.Programs;
import bandwright.checks.WholeRun;
import bandwright.checks.faults.DiskCall.Moved;
import bandwright.checks.faults.DiskCall.Written;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.past.PastPiece;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A run is stopped between any two of its calls to the disk, SQLite's among them: killed, or by a power cut that loses
 * any part of what wasn't synced. Who opens the outbox next finds the run whole and remembered, or neither.
 */
final class PowerCutTest {
    private static final String RUN = "2026-03-02-1";
    private static final int CUTS_AT_A_MOMENT = 3;

    @TempDir
    static Path folder;

    private static Path outbox;
    private static List<DiskCall> calls = List.of();
    private static Map<String, byte[]> whole = Map.of();

    @BeforeAll
    static void aRunIsRecorded() throws Exception {
        assumeTrue(Programs.has("strace"), "strace");
        Path home = folder.toRealPath();
        outbox = home.resolve("outbox");
        Path orders = Files.writeString(home.resolve("orders.csv"), "Order,SKU,Design,Qty\nQ1,COAST-S,lamp,2\n");
        List<String> command =
                new ArrayList<>(List.of("strace", "-o", home.resolve("disk").toString()));
        command.addAll(DiskCalls.OPTIONS);
        command.addAll(WholeRun.command(
                List.of("-XX:TieredStopAtLevel=1"),
                "run",
                orders.toString(),
                "--artwork",
                WholeRun.SAMPLE.resolve("artwork").toString(),
                "--out",
                outbox.toString(),
                "--date",
                "2026-03-02"));
        Process run = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(home.resolve("said").toFile())
                .start();
        boolean isRecorded = run.waitFor() == 0;
        assumeTrue(isRecorded || Files.isDirectory(outbox), "a system that lets strace look");
        assertThat(isRecorded).as(Files.readString(home.resolve("said"))).isTrue();
        calls = DiskCalls.read(home.resolve("disk"), outbox);
        whole = WholeRun.files(outbox.resolve(RUN));
    }

    @Test
    void theRecordIsWhole() throws IOException {
        assertThat(calls).hasSizeGreaterThan(50).anyMatch(call -> call instanceof Moved);
        assertThat(calls)
                .anyMatch(call -> call instanceof Written && call.path().endsWith("ledger.db"));

        Path replayed = folder.resolve("replayed");
        new DiskAsLeft(calls, outbox, replayed).make(calls.size(), any -> true);

        assertThat(WholeRun.files(replayed))
                .containsOnlyKeys(WholeRun.files(outbox).keySet());
        WholeRun.files(outbox)
                .forEach((name, bytes) -> assertThat(replayed.resolve(name)).hasBinaryContent(bytes));
    }

    @Test
    void killedBetweenAnyTwoCalls() throws IOException {
        int there = 0;
        for (int moment = 0; moment <= calls.size(); moment++) {
            there += isThereOrNot(moment, any -> true) ? 1 : 0;
        }
        assertThat(there).isBetween(1, calls.size());
    }

    @Test
    void thePowerCutBetweenAnyTwoCalls() throws IOException {
        int there = 0;
        for (int moment = 0; moment <= calls.size(); moment++) {
            there += isThereOrNot(moment, none -> false) ? 1 : 0;
            for (int cut = 0; cut < CUTS_AT_A_MOMENT; cut++) {
                SplittableRandom random = new SplittableRandom(moment * 31L + cut);
                isThereOrNot(moment, some -> random.nextInt(3) > 0);
            }
        }
        // Once the program has ended the run is on the disk for good.
        assertThat(there).isBetween(1, calls.size());
        assertThat(isThereOrNot(calls.size(), none -> false)).isTrue();
    }

    private static boolean isThereOrNot(int moment, IntPredicate survives) throws IOException {
        Path left = folder.resolve("left");
        new DiskAsLeft(calls, outbox, left).make(moment, survives);
        String about = "after " + moment + " of " + calls.size() + " calls, the last "
                + calls.subList(Math.max(0, moment - 1), moment);
        List<String> remembered;
        Outbox.open(left, waiting -> {}).close(); // removes what a killed run left
        try (Ledger ledger = Ledger.open(left)) {
            remembered = ledger.list("Q1").stream().map(PastPiece::id).toList();
        }
        Path run = left.resolve(RUN);
        boolean isThere = Files.exists(run);
        assertThat(remembered).as(about).isEqualTo(isThere ? List.of("Q1-1-1", "Q1-1-2") : List.of());
        if (isThere) {
            Map<String, byte[]> files = WholeRun.files(run);
            assertThat(files.keySet()).as(about).isEqualTo(whole.keySet());
            files.forEach(
                    (name, bytes) -> assertThat(bytes).as("%s, %s", about, name).isEqualTo(whole.get(name)));
        }
        try (Stream<Path> names = Files.list(left)) {
            assertThat(names.map(path -> path.getFileName().toString()))
                    .as(about)
                    .isSubsetOf(RUN, "ledger.db", "ledger.db-journal", "ledger.lock"); // SQLite keeps an empty journal
        }
        return isThere;
    }
}
