package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever rows come in: each ends once, each piece once, and the files say the same; or nothing is published. */
final class RandomInboxTest {
    private static final List<String> BLANKS = List.of(
            "MUG-11-W",
            "white mug",
            "mug-15-w",
            "STEIN-16-F",
            "TUM-20-W",
            "COAST-R",
            "CONE-12-W",
            "MUG-12",
            "",
            "=1+1");
    private static final List<String> DESIGNS =
            List.of("tern", "lamp", "choir", "Choir ", "tern.jpg", "turn", "", "../../etc/passwd");
    private static final List<String> QUANTITIES = List.of("1", "2", "3.0", "7", "0", "-1", "2.5", "many", "", "501");
    private static final List<String> DAYS = List.of("2026-03-04", "4 March 2026", "03/04/2026", "", "soon");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void everyRowEndsOnceInTheRecordsAndInTheFiles(long seed) throws IOException, RulebookFaults {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder text = new StringBuilder("Order,SKU,Design,Qty,Ship By,Status\r\n");
        int rows = 1 + random.nextInt(60);
        for (int i = 0; i < rows; i++) {
            text.append(String.join(
                            ",",
                            random.nextInt(20) == 0 ? "" : "Q" + random.nextInt(40),
                            any(BLANKS, random),
                            any(DESIGNS, random),
                            any(QUANTITIES, random),
                            any(DAYS, random),
                            random.nextInt(10) == 0 ? "Refunded" : "Paid"))
                    .append("\r\n");
        }
        Path inbox = Files.write(folder.resolve("orders.csv"), text.toString().getBytes(StandardCharsets.UTF_8));
        Rulebook rules = Rulebook.read(Optional.empty());
        Flow.Request asked = new Flow.Request(List.of(inbox), WholeRun.SAMPLE.resolve("artwork"), Optional.empty());

        try (Outbox outbox = Outbox.open(folder.resolve("outbox"), waiting -> {});
                Ledger ledger = Ledger.open(folder.resolve("outbox"))) {
            Run run = Flow.decide(outbox.nextRun(LocalDate.of(2026, 3, 2), 0), asked, rules, ledger, stage -> {});
            // Publishing reads every file back and compares its sums with the records'; a mismatch throws.
            Path published = Flow.publish(run, rules, outbox, ledger, stage -> {});

            int made = (int) run.units().stream()
                    .map(unit -> unit.matched().line().row().from())
                    .distinct()
                    .count();
            int ended = made
                    + run.held().size()
                    + run.skipped().size()
                    + run.orders().empty().size();
            assertThat(ended).as("seed %d", seed).isEqualTo(rows);
            assertThat(run.tiled().sheets().size())
                    .isGreaterThanOrEqualTo(run.tiled().atLeast());
            assertThat(published.resolve("run.json")).isRegularFile();
        }
    }

    private static String any(List<String> words, SplittableRandom random) {
        return words.get(random.nextInt(words.size()));
    }
}
