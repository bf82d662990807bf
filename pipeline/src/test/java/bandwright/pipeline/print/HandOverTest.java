package bandwright.pipeline.print;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.GiftShop;
import bandwright.pipeline.Run;
import bandwright.pipeline.RunMaker;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.ledger.RunEntry;
import bandwright.pipeline.outbox.RunRecord;
import bandwright.pipeline.shop.SamplePaper;
import bandwright.pipeline.tile.Sheet;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Length;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Monday's sheets go to a program that plays lp. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "a shell script plays lp")
final class HandOverTest {
    private static final String RUN = "2026-03-02-1";
    private static final Paper ROLL =
            SamplePaper.roll("roll", Length.mm(600), Optional.empty(), Length.mm(6), Optional.empty());

    @TempDir
    private Path folder;

    private Path outbox;
    private Ledger ledger;
    private FakeLp system;
    private final List<Handed> told = new ArrayList<>();

    @BeforeEach
    void anOutboxWithAnAwkwardName() throws Exception {
        outbox = Files.createDirectory(folder.resolve("Möwe's \"out\" $(box); & *"));
        ledger = Ledger.open(outbox);
        system = new FakeLp(folder);
    }

    @AfterEach
    void closed() {
        ledger.close();
    }

    @Test
    void everyFileGoesToItsPrintersQueueOnceAtTrueSize() throws Exception {
        Run run = run(room(MirrorBy.FILE, "harbour"), roll(500));
        print(run, system.that("echo 'request id is harbour-12 (1 file(s))'"));

        Path sheets = outbox.resolve(RUN).resolve("sheets").toAbsolutePath();
        assertThat(system.asked())
                .containsExactly(
                        words(
                                "-d harbour -t|2026-03-02-1 letter-01.pdf|-n 1 -o print-scaling=none"
                                        + " -o media=na_letter_8.5x11in -o sides=one-sided -o number-up=1"
                                        + " -o job-sheets=none -o mirror=false --",
                                sheets.resolve("letter-01.pdf")),
                        words(
                                "-t|2026-03-02-1 roll-01.pdf|-n 1 -o print-scaling=none"
                                        + " -o media=custom_roll_600x500mm -o sides=one-sided -o number-up=1"
                                        + " -o job-sheets=none --",
                                sheets.resolve("roll-01.pdf")));
        assertThat(told).noneMatch(Handed::isAPersonNeeded);
        assertThat(told.get(0).line()).contains("letter-01.pdf", "the queue harbour", "harbour-12");
        assertThat(told.get(1).line()).contains("default queue", "mirroring must be ON");
        assertThat(ledger.handovers().left()).isEmpty();
    }

    @Test
    void whatWasSentIsNeverSentAgain() throws Exception {
        Run run = run(room(MirrorBy.FILE, ""));
        print(run, system.that("echo 'request id is harbour-12 (1 file(s))'"));
        told.clear();
        handOver(system.that("exit 0")).send(run, outbox.resolve(RUN), told::add);
        assertThat(system.asked()).hasSize(1);
        assertThat(told).singleElement().matches(Handed::isAPersonNeeded);
    }

    @Test
    void aRefusalIsToldInOneLineWithTheSystemsWords() throws Exception {
        print(
                run(room(MirrorBy.FILE, "pier"), roll(500)),
                system.that("echo 'lp: The printer or class does not exist.' >&2", "echo 'more' >&2", "exit 1"));
        assertThat(told).hasSize(2).allMatch(Handed::isAPersonNeeded);
        assertThat(told.get(0).line())
                .contains("letter-01.pdf was not printed", "the queue pier", "does not exist", "by hand")
                .doesNotContain("\n", "more");
        assertThat(ledger.handovers().left()).as("somebody knows").isEmpty();
    }

    @Test
    void noAnswerInTimeMeansThatNobodyKnows() throws Exception {
        Lp slow = new Lp(system.that("sleep 60 & sleep 60").program(), Duration.ofMillis(700));
        print(run(room(MirrorBy.FILE, "pier")), slow);
        assertThat(told).singleElement().matches(Handed::isAPersonNeeded);
        assertThat(told.get(0).line()).contains("may or may not be printed", "lpstat -W all -o pier");
    }

    @Test
    void aProgramThatIsKilledAnswersNothing() throws Exception {
        print(run(room(MirrorBy.FILE, "")), system.that("kill -9 $$"));
        assertThat(told.get(0).line()).contains("may or may not be printed", "\"lpstat -W all -o\"");
    }

    @Test
    void whatAProgramLeavesBehindOrSaysAtLengthHoldsNobodyUp() throws Exception {
        print(
                run(room(MirrorBy.FILE, "pier")),
                system.that(
                        "echo 'request id is pier-3 (1 file(s))'", "yes x | head -c 300000", "sleep 60 &", "exit 0"));
        assertThat(told).singleElement().matches(handed -> !handed.isAPersonNeeded());
    }

    @Test
    void aComputerWithoutLpSaysSoOnce() {
        print(
                run(room(MirrorBy.FILE, ""), roll(500)),
                new Lp(folder.resolve("none").toString(), Duration.ofSeconds(1)));
        assertThat(told).singleElement().matches(Handed::isAPersonNeeded);
        assertThat(told.get(0).line()).contains("no program lp", "by hand");
        assertThat(ledger.handovers().left()).isEmpty();
    }

    @Test
    void pagesOfDifferentLengthsAreLeftToAPerson() throws Exception {
        print(run(roll(500), roll(700)), system.that("exit 0"));
        assertThat(system.asked()).isEmpty();
        assertThat(told).singleElement().matches(Handed::isAPersonNeeded);
        assertThat(told.get(0).line()).contains("roll-01.pdf was not printed", "different lengths");
    }

    @Test
    void stoppedBeforeTheSystemWasAskedItIsToldOnceAndNotSent() throws Exception {
        Run run = run(room(MirrorBy.FILE, ""));
        handOver(system.that("exit 0")).promise(run);
        publish(run);

        reopen();
        handOver(system.that("exit 0")).leftovers(told::add);
        assertThat(told).singleElement().matches(Handed::isAPersonNeeded);
        assertThat(told.get(0).line()).contains("letter-01.pdf was never handed to the printer");
        handOver(system.that("exit 0")).leftovers(told::add);
        assertThat(told).as("once").hasSize(1);
        handOver(system.that("exit 0")).send(run, outbox.resolve(RUN), told::add);
        assertThat(system.asked()).isEmpty();
    }

    @Test
    void stoppedWhileTheSystemWasAskedAPersonHasToLook() throws Exception {
        Run run = run(room(MirrorBy.FILE, "pier"));
        handOver(system.that("exit 0")).promise(run);
        publish(run);
        assertThat(ledger.handovers().begin(run.id(), "sheets/letter-01.pdf")).isTrue();

        reopen();
        handOver(system.that("exit 0")).leftovers(told::add);
        assertThat(told).singleElement().matches(Handed::isAPersonNeeded);
        assertThat(told.get(0).line())
                .contains("letter-01.pdf may or may not be printed", "the queue pier", "lpstat -W all -o pier");
        handOver(system.that("exit 0")).send(run, outbox.resolve(RUN), told::add);
        assertThat(system.asked()).isEmpty();
    }

    @Test
    void whatWasNeverPublishedIsForgottenAndItsNumberFree() throws Exception {
        Run run = run(room(MirrorBy.FILE, ""));
        handOver(system.that("exit 0")).promise(run);
        reopen();
        publish(run); // the next run of that day, without a printer
        handOver(system.that("exit 0")).leftovers(told::add);
        assertThat(told).isEmpty();
    }

    @Test
    void aLedgerThatCannotBeWrittenSendsNothing() throws Exception {
        Run run = run(room(MirrorBy.FILE, ""));
        HandOver handOver = handOver(system.that("exit 0"));
        handOver.promise(run);
        publish(run);
        ledger.close(); // its connection is gone, as with a network drive
        handOver.send(run, outbox.resolve(RUN), told::add);
        assertThat(system.asked()).isEmpty();
        assertThat(told).singleElement().matches(Handed::isAPersonNeeded);
        assertThat(told.get(0).line()).contains("run is published", "ledger can't be written");
    }

    @Test
    void aRunWithoutSheetsAsksNobody() throws Exception {
        Run run = run();
        print(run, system.that("exit 0"));
        assertThat(system.asked()).isEmpty();
        assertThat(told).isEmpty();
    }

    private void print(Run run, Lp lp) {
        HandOver handOver = handOver(lp);
        handOver.promise(run);
        publish(run);
        handOver.send(run, outbox.resolve(RUN), told::add);
    }

    private HandOver handOver(Lp lp) {
        return new HandOver(ledger, outbox, lp);
    }

    private void publish(Run run) {
        RunRecord record = ledger.entering(new RunEntry(run.id(), List.of(), List.of(), List.of()));
        record.begin();
        record.keep();
    }

    private void reopen() {
        ledger.close();
        ledger = Ledger.open(outbox);
    }

    /** Monday with a sheet in each of these rooms. */
    private static Run run(PaperRoom... rooms) {
        RunMaker maker = RunMaker.weekend();
        Sheet any = maker.sheets.get(0);
        maker.sheets.clear();
        for (PaperRoom room : rooms) {
            maker.sheets.add(new Sheet(room, any.placed()));
        }
        return maker.run();
    }

    private static PaperRoom room(MirrorBy mirror, String queue) {
        return PaperRoom.of(GiftShop.ROOM.paper(), printer("desk", mirror, queue));
    }

    private static PaperRoom roll(double length) {
        return PaperRoom.of(ROLL, printer("wide", MirrorBy.DRIVER, "")).cutAfter(Length.mm(length));
    }

    private static Printer printer(String id, MirrorBy mirror, String queue) {
        return new Printer(
                id,
                List.of("letter", "roll"),
                Optional.of(queue).filter(name -> !name.isEmpty()),
                mirror,
                Optional.empty(),
                Optional.empty(),
                1,
                1,
                "");
    }

    /** Words parted by spaces, but for those between bars; and the file. */
    private static List<String> words(String text, Path file) {
        List<String> words = new ArrayList<>();
        String[] parts = text.split(Pattern.quote("|"), -1);
        for (int i = 0; i < parts.length; i++) {
            words.addAll(
                    i % 2 == 1 ? List.of(parts[i]) : List.of(parts[i].strip().split(" ")));
        }
        words.add(file.toString());
        return words;
    }
}
