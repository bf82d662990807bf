package bandwright.pipeline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bandwright.pipeline.RunId;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.past.Heating;
import bandwright.pipeline.past.OrderKey;
import bandwright.pipeline.past.PastHold;
import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.past.Signature;
import bandwright.rules.units.Temperature;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class LedgerTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    private static final OrderKey ORDER = new OrderKey("harbour", "Q1");

    @TempDir
    private Path outbox;

    @Test
    void nothingIsRememberedAndNoFileMadeBeforeTheFirstRun() {
        try (Ledger ledger = Ledger.open(outbox)) {
            assertThat(ledger.past(List.of(ORDER), Map.of(), List.of()).listGood(ORDER))
                    .isEmpty();
            assertThat(ledger.highestRun(MONDAY)).isZero();
        }
        assertThat(outbox.resolve("ledger.db")).doesNotExist();
    }

    @Test
    void whatWasPublishedIsRemembered() throws Exception {
        publish(1, piece("Q1-1-1", 1), piece("Q1-1-2", 1));
        try (Ledger ledger = Ledger.open(outbox)) {
            assertThat(ledger.past(List.of(ORDER), Map.of(), List.of()).listGood(ORDER))
                    .containsExactly(piece("Q1-1-1", 1), piece("Q1-1-2", 1));
            assertThat(ledger.past(List.of(new OrderKey("market", "Q1")), Map.of(), List.of())
                            .ids())
                    .as("an id of another site's order of that number")
                    .containsExactlyInAnyOrder("Q1-1-1", "Q1-1-2");
            assertThat(ledger.highestRun(MONDAY)).isEqualTo(1);
        }
    }

    @Test
    void killedBeforeTheFolderHasItsNameTheEntriesGo() {
        try (Ledger ledger = Ledger.open(outbox)) {
            ledger.entering(entry(1, piece("Q1-1-1", 1))).begin();
        }
        try (Ledger ledger = Ledger.open(outbox)) {
            assertThat(ledger.list("Q1")).isEmpty();
            assertThat(ledger.highestRun(MONDAY)).isZero();
        }
    }

    @Test
    void killedAfterTheFolderHasItsNameTheEntriesStay() throws Exception {
        try (Ledger ledger = Ledger.open(outbox)) {
            ledger.entering(entry(1, piece("Q1-1-1", 1))).begin();
        }
        Files.createDirectory(outbox.resolve("2026-03-02-1"));
        Ledger.open(outbox).close();
        Files.delete(outbox.resolve("2026-03-02-1")); // packed and thrown away later
        try (Ledger ledger = Ledger.open(outbox)) {
            assertThat(ledger.list("Q1")).hasSize(1);
        }
    }

    @Test
    void whatIsTakenBackLeavesNoTrace() {
        try (Ledger ledger = Ledger.open(outbox)) {
            var entering = ledger.entering(entry(1, piece("Q1-1-1", 1)));
            entering.begin();
            entering.takeBack();
            assertThat(ledger.list("Q1")).isEmpty();
            assertThat(ledger.past(List.of(ORDER), Map.of(), List.of()).holds()).isEmpty();
        }
    }

    @Test
    void spoiledUnitsAreMarkedAllOrNone() throws Exception {
        publish(1, piece("Q1-1-1", 1), piece("Q1-1-2", 1));
        try (Ledger ledger = Ledger.open(outbox)) {
            assertThat(ledger.spoil(List.of("Q1-1-1", "Q9-9-9"), MONDAY, "ghosted"))
                    .containsExactly("Q9-9-9");
            assertThat(ledger.past(List.of(ORDER), Map.of(), List.of()).listSpoiled(ORDER))
                    .isEmpty();

            assertThat(ledger.spoil(List.of("Q1-1-1"), MONDAY, "ghosted")).isEmpty();
            assertThat(ledger.spoil(List.of("Q1-1-1"), MONDAY, "again")).containsExactly("Q1-1-1");
            PastPiece spoiled = ledger.list("Q1").get(0);
            assertThat(spoiled.spoiled()).contains(new PastPiece.Spoiled(MONDAY, "ghosted"));
        }
    }

    @Test
    void aCountGoesDownWithWhatWasTakenSince() throws Exception {
        publish(1, piece("Q1-1-1", 1), piece("Q1-1-2", 1));
        try (Ledger ledger = Ledger.open(outbox)) {
            assertThat(ledger.past(List.of(), Map.of("MUG-11-W", MONDAY), List.of())
                            .takenOf("MUG-11-W"))
                    .isEqualTo(2);
            assertThat(ledger.past(List.of(), Map.of("MUG-11-W", MONDAY.plusDays(1)), List.of())
                            .takenOf("MUG-11-W"))
                    .isZero();
        }
    }

    @Test
    void theBuyersWordsGoButThePiecesStay() throws Exception {
        publish(1, piece("Q1-1-1", 1));
        try (Ledger ledger = Ledger.open(outbox)) {
            ledger.purge(MONDAY);
            assertThat(ledger.list("Q1").get(0).what()).isEqualTo("MUG-11-W, tern, name: Ada");
            ledger.purge(MONDAY.plusDays(1));
            assertThat(ledger.list("Q1").get(0).what()).isEmpty();
            assertThat(ledger.list("Q1").get(0).signature())
                    .isEqualTo(piece("Q1-1-1", 1).signature());
        }
        assertThat(new String(Files.readAllBytes(outbox.resolve("ledger.db")), StandardCharsets.ISO_8859_1))
                .as("nor do they linger in the file")
                .doesNotContain("Ada");
    }

    @Test
    void aDamagedLedgerIsRefusedWithTheWayOut() throws Exception {
        publish(1, piece("Q1-1-1", 1));
        Path file = outbox.resolve("ledger.db");
        byte[] bytes = Files.readAllBytes(file);
        for (int i = 0; i < 100; i++) {
            bytes[i] = 'x';
        }
        Files.write(file, bytes);
        assertThatThrownBy(() -> Ledger.open(outbox))
                .isInstanceOf(OutboxFault.class)
                .hasMessageContaining("damaged")
                .extracting(fault -> ((OutboxFault) fault).cure())
                .asString()
                .contains("backup");
        assertThat(file).hasBinaryContent(bytes);
    }

    @Test
    void aLedgerOfANewerVersionIsRefused() throws Exception {
        publish(1, piece("Q1-1-1", 1));
        List<String> newer = new ArrayList<>(Schema.STEPS);
        newer.add("ALTER TABLE runs ADD COLUMN mood TEXT");
        Ledger.open(outbox, newer).close();
        assertThatThrownBy(() -> Ledger.open(outbox)).hasMessageContaining("newer");
    }

    @Test
    void anOlderLedgerIsCopiedAsideAndUpgraded() throws Exception {
        publish(1, piece("Q1-1-1", 1));
        byte[] before = Files.readAllBytes(outbox.resolve("ledger.db"));
        List<String> newer = new ArrayList<>(Schema.STEPS);
        newer.add("ALTER TABLE runs ADD COLUMN mood TEXT; UPDATE runs SET mood = 'calm'");
        try (Ledger ledger = Ledger.open(outbox, newer)) {
            assertThat(ledger.list("Q1")).hasSize(1);
        }
        assertThat(outbox.resolve("ledger.db.version-" + Schema.STEPS.size())).hasBinaryContent(before);
    }

    @Test
    void anUpgradeThatFailsLeavesTheLedgerAsItWas() throws Exception {
        publish(1, piece("Q1-1-1", 1));
        List<String> broken = new ArrayList<>(Schema.STEPS);
        broken.add("ALTER TABLE runs ADD COLUMN mood TEXT; UPDATE nowhere SET mood = 'calm'");
        assertThatThrownBy(() -> Ledger.open(outbox, broken)).isInstanceOf(OutboxFault.class);
        try (Ledger ledger = Ledger.open(outbox)) {
            assertThat(ledger.list("Q1")).hasSize(1);
        }
    }

    private void publish(int number, PastPiece... pieces) throws Exception {
        try (Ledger ledger = Ledger.open(outbox)) {
            var entering = ledger.entering(entry(number, pieces));
            entering.begin();
            Files.createDirectories(outbox.resolve("2026-03-02-" + number));
            entering.keep();
        }
    }

    private static RunEntry entry(int number, PastPiece... pieces) {
        PastHold hold = new PastHold(ORDER, "2", "a.csv |  | 3", "content", "blank-unknown", 0);
        return new RunEntry(new RunId(MONDAY, number), List.of(pieces), List.of(hold), List.of());
    }

    private static PastPiece piece(String id, int run) {
        return new PastPiece(
                id,
                "2026-03-02-" + run,
                ORDER,
                "1",
                1,
                Signature.of("MUG-11-W", "tern", new TreeMap<>(Map.of("name", "Ada"))),
                "MUG-11-W",
                "MUG-11-W, tern, name: Ada",
                "letter-01.pdf, page 1",
                1,
                "content of row 2",
                "clamp",
                Optional.of(new Heating(Temperature.fahrenheit(385), 180, "medium")),
                Optional.empty(),
                Optional.empty());
    }
}
