package bandwright.pipeline.owed;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.intake.Inbox;
import bandwright.pipeline.intake.InboxFault;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One shop's weeks: what is in the inbox changes, the outbox remembers. */
final class Weeks {
    private static final Path ARTWORK = Path.of("..", "inbox-sample", "artwork");
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

    private final Path folder;
    private int week;
    private Optional<Path> tables = Optional.empty();

    Weeks(Path folder) {
        this.folder = folder;
    }

    /** Puts a table of the shop's own into its rulebook. */
    Weeks table(String name, String text) throws IOException {
        Path own = Files.createDirectories(folder.resolve("tables"));
        Files.writeString(own.resolve(name), text);
        tables = Optional.of(own);
        return this;
    }

    Path outbox() {
        return folder.resolve("outbox");
    }

    /** The next week's run over CSV files, each with its name in front: {@code "harbour.csv", "Order,SKU\n..."}. */
    Run run(String... namesAndTexts) throws IOException, InboxFault, RulebookFaults {
        Path inbox = Files.createDirectories(folder.resolve("inbox-" + week));
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            Files.writeString(inbox.resolve(namesAndTexts[i]), namesAndTexts[i + 1]);
        }
        return run(inbox);
    }

    /** The next week's run over what the last one held. */
    Run runHeld(Path held) throws IOException, InboxFault, RulebookFaults {
        Path inbox = Files.createDirectories(folder.resolve("inbox-" + week));
        Files.copy(held, inbox.resolve("held.xlsx"));
        return run(inbox);
    }

    private Run run(Path inbox) throws IOException, InboxFault, RulebookFaults {
        Rulebook rules = Rulebook.read(tables);
        Flow.Request asked = new Flow.Request(Inbox.files(List.of(inbox)), ARTWORK, Optional.empty());
        LocalDate day = MONDAY.plusWeeks(week++);
        try (Outbox place = Outbox.open(outbox(), waiting -> {});
                Ledger ledger = Ledger.open(outbox())) {
            Run run = Flow.decide(place.nextRun(day, ledger.highestRun(day)), asked, rules, ledger, stage -> {});
            if (Flow.hasNews(run, rules)) {
                Flow.publish(run, rules, place, ledger, stage -> {});
            }
            return run;
        }
    }

    void spoil(String... ids) {
        try (Ledger ledger = Ledger.open(outbox())) {
            List<String> unknown = ledger.spoil(List.of(ids), MONDAY, "ghosted");
            if (!unknown.isEmpty()) {
                throw new AssertionError(unknown);
            }
        }
    }

    /** What became of the rows of a run, in words that a test can read. */
    static List<String> story(Run run) {
        List<String> story = new ArrayList<>();
        run.units().stream().map(Unit::id).forEach(id -> story.add("made " + id));
        run.held()
                .forEach(held -> story.add("held " + held.order() + " x" + held.pieces() + " "
                        + held.reason().code()));
        run.skipped()
                .forEach(skipped ->
                        story.add("skipped " + skipped.order() + " x" + skipped.pieces() + " " + skipped.code()));
        run.owed().stops().forEach(stop -> story.add("stop " + stop.printed().id()));
        return story;
    }
}
