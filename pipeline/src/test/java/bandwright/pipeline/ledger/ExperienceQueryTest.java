package bandwright.pipeline.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.RunId;
import bandwright.pipeline.past.Experience;
import bandwright.pipeline.past.Heating;
import bandwright.pipeline.past.OrderKey;
import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.past.Signature;
import bandwright.pipeline.past.Turnout;
import bandwright.rules.units.Temperature;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the ledger knows of blanks, heat sources and settings. */
final class ExperienceQueryTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    private static final Heating SLOW = new Heating(Temperature.celsius(180), 210, "medium");
    private static final Heating FAST = new Heating(Temperature.fahrenheit(385), 180, "firm");

    @TempDir
    private Path outbox;

    @Test
    void piecesAreCountedByBlankSourceAndSetting() throws Exception {
        publish(1, pieces("A", 5, "MUG-11-W", "clamp", SLOW));
        publish(2, pieces("B", 3, "MUG-11-W", "clamp", FAST));
        publish(3, pieces("C", 2, "MUG-11-W", "oven", SLOW));
        publish(4, pieces("D", 7, "COASTER", "flat", SLOW));
        try (Ledger ledger = Ledger.open(outbox)) {
            ledger.spoil(List.of("A-1", "B-2"), MONDAY, "ghosted");
            ledger.spoil(List.of("A-3", "C-1"), MONDAY, "dropped");
            Experience known = experience(ledger);
            assertThat(known.made("MUG-11-W").pieces()).isEqualTo(10);
            assertThat(known.made("MUG-11-W", "clamp"))
                    .isEqualTo(
                            new Turnout(8, 3, List.of(new Turnout.Why("ghosted", 2), new Turnout.Why("dropped", 1))));
            assertThat(known.madeWith("MUG-11-W", "clamp", FAST))
                    .isEqualTo(new Turnout(3, 1, List.of(new Turnout.Why("ghosted", 1))));
            assertThat(known.made("MUG-11-W", "oven").spoiled()).isEqualTo(1);
            assertThat(known.listHeatings("MUG-11-W", "clamp")).containsExactly(SLOW, FAST);
            assertThat(known.listSources("MUG-11-W")).containsExactly("clamp", "oven");
            assertThat(known.made("COASTER").pieces())
                    .as("a blank that wasn't asked for")
                    .isZero();
        }
    }

    @Test
    void aRunThatNeverCameToBeTaughtNothing() throws Exception {
        publish(1, pieces("A", 5, "MUG-11-W", "clamp", SLOW));
        try (Ledger ledger = Ledger.open(outbox)) {
            ledger.entering(entry(2, pieces("B", 40, "MUG-11-W", "clamp", SLOW)))
                    .begin();
            try (Ledger other = Ledger.look(outbox)) {
                assertThat(experience(other).made("MUG-11-W", "clamp").pieces()).isEqualTo(5);
            }
        }
    }

    @Test
    void anOlderLedgersPiecesCountForTheirBlankOnly() throws Exception {
        older();
        publish(2, pieces("B", 3, "MUG-11-W", "clamp", SLOW));
        try (Ledger ledger = Ledger.open(outbox)) {
            Experience known = experience(ledger);
            assertThat(known.made("MUG-11-W")).isEqualTo(new Turnout(5, 1, List.of(new Turnout.Why("ghosted", 1))));
            assertThat(known.made("MUG-11-W", "clamp")).isEqualTo(new Turnout(3, 0, List.of()));
            assertThat(known.listSources("MUG-11-W")).containsExactly("clamp");
            PastPiece old = ledger.list("Q1").get(0);
            assertThat(old.heating()).isEmpty();
            assertThat(old.spoiled()).isPresent();
        }
        assertThat(outbox.resolve("ledger.db.version-1")).exists();
    }

    @Test
    void noPieceIsReadItselfToBeCounted() throws Exception {
        publish(1, pieces("A", 5, "MUG-11-W", "clamp", SLOW));
        String plan = "";
        try (Connection database = DriverManager.getConnection("jdbc:sqlite:" + outbox.resolve("ledger.db"));
                Statement statement = database.createStatement();
                ResultSet rows = statement.executeQuery(
                        "EXPLAIN QUERY PLAN " + ExperienceQuery.SQL.replace("?", "'MUG-11-W'"))) {
            while (rows.next()) {
                plan += rows.getString("detail") + "\n";
            }
        }
        assertThat(plan).contains("USING COVERING INDEX units_by_pressing").doesNotContain("TEMP B-TREE");
    }

    /** A ledger as version 1 left it: two pieces of an order, the first of them ruined. */
    private void older() throws Exception {
        Files.createDirectories(outbox.resolve("2026-03-02-1"));
        try (Connection database = DriverManager.getConnection("jdbc:sqlite:" + outbox.resolve("ledger.db"));
                Statement statement = database.createStatement()) {
            for (String sql : Schema.STEPS.get(0).split(";", -1)) {
                statement.executeUpdate(sql);
            }
            statement.executeUpdate("INSERT INTO runs VALUES ('2026-03-02-1', '2026-03-02', 1, 'made')");
            String unit =
                    "INSERT INTO units VALUES ('%s', '2026-03-02-1', '2026-03-02', '', 'Q1', 'Q1', '1', %s, 'abc',"
                            + " 'MUG-11-W', 'tern', 'letter-01.pdf, page 1', 1, 'row', NULL, %s)";
            statement.executeUpdate(unit.formatted("Q1-1-1", "1", "'2026-03-02', 'ghosted'"));
            statement.executeUpdate(unit.formatted("Q1-1-2", "2", "NULL, NULL"));
            statement.executeUpdate("PRAGMA user_version = 1");
        }
    }

    private static Experience experience(Ledger ledger) {
        return ledger.past(List.of(), Map.of(), List.of("MUG-11-W")).experience();
    }

    private void publish(int number, List<PastPiece> pieces) throws Exception {
        try (Ledger ledger = Ledger.open(outbox)) {
            var entering = ledger.entering(entry(number, pieces));
            entering.begin();
            Files.createDirectories(outbox.resolve("2026-03-02-" + number));
            entering.keep();
        }
    }

    private static RunEntry entry(int number, List<PastPiece> pieces) {
        return new RunEntry(new RunId(MONDAY, number), pieces, List.of(), List.of());
    }

    private static List<PastPiece> pieces(String order, int count, String sku, String source, Heating heating) {
        List<PastPiece> pieces = new ArrayList<>();
        for (int piece = 1; piece <= count; piece++) {
            pieces.add(new PastPiece(
                    order + "-" + piece,
                    "2026-03-02-1",
                    new OrderKey("", order),
                    "1",
                    piece,
                    Signature.of(sku, "tern", new TreeMap<>()),
                    sku,
                    sku + ", tern",
                    "letter-01.pdf, page 1",
                    1,
                    "row",
                    source,
                    Optional.of(heating),
                    Optional.empty(),
                    Optional.empty()));
        }
        return pieces;
    }
}
