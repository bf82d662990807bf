package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.past.PastPiece;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The process is killed at moments spread over a whole run. Whoever runs again finds the killed run whole and remembered,
 * or neither; in the end every piece was printed once.
 */
final class KilledAnywhereTest {
    private static final int MOMENTS = 6;
    private static final List<String> PIECES = List.of("Q1-1-1", "Q1-1-2", "Q2-1-1", "Q3-1-1");

    @TempDir
    private Path folder;

    @Test
    void everyPieceIsPrintedOnceHoweverOftenTheRunIsKilled() throws Exception {
        Path orders = Files.writeString(
                folder.resolve("orders.csv"),
                "Order,SKU,Design,Qty\nQ1,MUG-11-W,tern,2\nQ2,COAST-S,lamp,1\nQ3,STEIN-16-F,choir,1\n");
        long begun = System.nanoTime();
        assertThat(run(orders, folder.resolve("whole")).waitFor()).isZero();
        long whole = System.nanoTime() - begun;
        for (int moment = 1; moment <= MOMENTS; moment++) {
            Path outbox = folder.resolve("outbox-" + moment);
            Process killed = run(orders, outbox);
            killed.waitFor(whole * moment / MOMENTS, TimeUnit.NANOSECONDS);
            killed.destroyForcibly().waitFor();

            assertThat(run(orders, outbox).waitFor())
                    .as("after the kill at moment %d", moment)
                    .isZero();
            assertThat(printed(outbox))
                    .as("units in folders, moment %d", moment)
                    .isEqualTo(PIECES);
            assertThat(remembered(outbox))
                    .as("units in the ledger, moment %d", moment)
                    .isEqualTo(PIECES);
            try (Stream<Path> left = Files.list(outbox)) {
                assertThat(left.map(path -> path.getFileName().toString()))
                        .containsExactlyInAnyOrder("2026-03-02-1", "ledger.db", "ledger.lock");
            }
        }
    }

    private static Process run(Path orders, Path outbox) throws Exception {
        return WholeRun.start(
                List.of("-XX:TieredStopAtLevel=1"),
                Map.of(),
                "run",
                orders.toString(),
                "--artwork",
                WholeRun.SAMPLE.resolve("artwork").toString(),
                "--out",
                outbox.toString(),
                "--date",
                "2026-03-02");
    }

    private static List<String> printed(Path outbox) throws Exception {
        List<String> ids = new ArrayList<>();
        try (Stream<Path> runs = Files.list(outbox)) {
            for (Path run : runs.filter(Files::isDirectory).sorted().toList()) {
                String json = Files.readString(run.resolve("run.json"), StandardCharsets.UTF_8);
                PIECES.stream()
                        .filter(id -> json.contains("\"id\": \"" + id + "\""))
                        .forEach(ids::add);
            }
        }
        return ids.stream().sorted().toList();
    }

    private static List<String> remembered(Path outbox) {
        try (Ledger ledger = Ledger.look(outbox)) {
            return Stream.of("Q1", "Q2", "Q3")
                    .flatMap(order -> ledger.list(order).stream())
                    .map(PastPiece::id)
                    .toList();
        }
    }
}
