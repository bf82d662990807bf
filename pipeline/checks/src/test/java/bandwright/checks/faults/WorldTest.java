package bandwright.checks.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bandwright.checks.WholeRun;
import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.intake.Inbox;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.intake.Intake;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.past.PastPiece;
import bandwright.rules.Rulebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the world does to a run besides a failing disk: files that go, a clock that jumps, a ledger that is gone. */
final class WorldTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path shop;

    private Rulebook rules;
    private Path inbox;
    private Path artwork;

    @BeforeEach
    void aShop() throws Exception {
        rules = Rulebook.read(Optional.empty());
        inbox = Files.createDirectories(shop.resolve("inbox"));
        artwork = Files.createDirectories(inbox.resolve("artwork"));
        Files.copy(WholeRun.SAMPLE.resolve("artwork/storm-lamp-square.png"), artwork.resolve("storm-lamp-square.png"));
        order("Q1");
    }

    @Test
    void anOrderFileThatIsTakenAwayIsNamedAndStopsNoOther() throws Exception {
        List<Path> files = List.of(inbox.resolve("gone.csv"), inbox.resolve("orders.csv"));

        List<InboxFile> read = Intake.read(files, rules).files();

        assertThat(read).extracting(InboxFile::state).containsExactly(InboxFile.State.UNREADABLE, InboxFile.State.READ);
        assertThat(read.get(0).message()).contains("taken away").contains("Put it back");
    }

    @Test
    void aPictureThatIsTakenAwayWhileTheRunIsMadeStopsItAndLeavesNothing() throws Exception {
        Path folder = shop.resolve("outbox");
        try (Outbox outbox = Outbox.open(folder, waiting -> {});
                Ledger ledger = Ledger.open(folder)) {
            Run run = decided(outbox, ledger, MONDAY);
            Files.delete(artwork.resolve("storm-lamp-square.png"));

            OutboxFault fault = catchThrowableOfType(
                    OutboxFault.class, () -> Flow.publish(run, rules, outbox, ledger, stage -> {}));

            assertThat(fault.getMessage()).contains("storm-lamp-square.png").doesNotContain("Exception");
            assertThat(fault.cure()).contains("artwork");
        }
        assertThat(names(folder)).containsExactly("ledger.lock");
    }

    @Test
    void aClockThatGoesBackPrintsNothingTwice() throws Exception {
        assertThat(run(MONDAY)).contains("2026-03-02-1");
        assertThat(run(MONDAY.minusDays(10))).isEmpty();
        order("Q2");

        assertThat(run(MONDAY.minusDays(10))).contains("2026-02-20-1");
        assertThat(run(MONDAY)).isEmpty();
        assertThat(pieces("Q1")).extracting(PastPiece::run).containsExactly("2026-03-02-1");
        assertThat(pieces("Q2")).extracting(PastPiece::run).containsExactly("2026-02-20-1");
    }

    @Test
    void aClockThatJumpsAheadAndBackPrintsNothingTwice() throws Exception {
        assertThat(run(MONDAY)).contains("2026-03-02-1");
        order("Q2");
        assertThat(run(MONDAY.plusYears(10))).contains("2036-03-02-1");

        assertThat(run(MONDAY)).isEmpty();
        assertThat(pieces("Q1")).hasSize(1);
        assertThat(pieces("Q2")).hasSize(1);
    }

    @Test
    void aLedgerThatIsGoneIsBegunAnewAndNoRunIsReplaced() throws Exception {
        assertThat(run(MONDAY)).contains("2026-03-02-1");
        Files.delete(shop.resolve("outbox").resolve(Ledger.FILE));

        assertThat(run(MONDAY)).contains("2026-03-02-2");
    }

    @Test
    void inboxAndRulesAreOnlyRead() throws Exception {
        Path own = Files.createDirectories(shop.resolve("rules"));
        Files.writeString(own.resolve("shop.csv"), "key,value\nname,Quillmoor\n");
        rules = Rulebook.read(Optional.of(own));
        Map<String, byte[]> before = WholeRun.files(inbox);
        Map<String, byte[]> rulesBefore = WholeRun.files(own);

        run(MONDAY);

        assertThat(WholeRun.files(inbox)).containsExactlyEntriesOf(before);
        assertThat(WholeRun.files(own)).containsExactlyEntriesOf(rulesBefore);
    }

    private void order(String number) throws IOException {
        Files.writeString(
                inbox.resolve(number.equals("Q1") ? "orders.csv" : number + ".csv"),
                "Order,SKU,Design,Qty\n" + number + ",COAST-S,storm-lamp-square.png,1\n");
    }

    private Run decided(Outbox outbox, Ledger ledger, LocalDate day) throws Exception {
        Flow.Request asked = new Flow.Request(Inbox.files(List.of(inbox)), artwork, Optional.empty());
        return Flow.decide(outbox.nextRun(day, ledger.highestRun(day)), asked, rules, ledger, stage -> {});
    }

    /** The name of the run's folder; empty if there was nothing to publish. */
    private Optional<String> run(LocalDate day) throws Exception {
        Path folder = shop.resolve("outbox");
        try (Outbox outbox = Outbox.open(folder, waiting -> {});
                Ledger ledger = Ledger.open(folder)) {
            ledger.purge(day.minusDays(rules.shop().keepBuyerDays()));
            Run run = decided(outbox, ledger, day);
            return Flow.hasNews(run, rules)
                    ? Optional.of(Flow.publish(run, rules, outbox, ledger, stage -> {})
                            .getFileName()
                            .toString())
                    : Optional.empty();
        }
    }

    private List<PastPiece> pieces(String order) {
        try (Ledger ledger = Ledger.look(shop.resolve("outbox"))) {
            return ledger.list(order);
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> names = Files.list(folder)) {
            return names.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
