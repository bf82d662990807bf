package bandwright.pipeline.shop;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.RunId;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.intake.Inbox;
import bandwright.pipeline.intake.InboxFault;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.Piece;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.owed.OwedLine;
import bandwright.pipeline.past.Memory;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The gift shop with tables of its own: orders in, and what became of them in words that a test can read. */
public final class Stall {
    private static final Path ARTWORK = Path.of("..", "inbox-sample", "artwork");
    private static final RunId ID = new RunId(LocalDate.of(2026, 3, 2), 1);

    private final Path folder;
    private Path artwork = ARTWORK;

    public Stall(Path folder) {
        this.folder = folder;
    }

    /** Writes a table of the rulebook. */
    public Stall table(String name, String... rows) throws IOException {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.writeString(tables.resolve(name), String.join("\n", rows) + "\n");
        return this;
    }

    /** Puts an order file into the inbox. */
    public Stall orders(String name, String... rows) throws IOException {
        Path inbox = Files.createDirectories(folder.resolve("inbox"));
        Files.writeString(inbox.resolve(name), String.join("\n", rows) + "\n");
        return this;
    }

    /** Takes another artwork folder than the sample's. */
    public Stall artwork(Path other) {
        artwork = other;
        return this;
    }

    public Rulebook rules() throws RulebookFaults {
        Path tables = folder.resolve("tables");
        return Rulebook.read(Optional.of(tables).filter(Files::isDirectory));
    }

    public Run run() throws IOException, InboxFault, RulebookFaults {
        List<Path> files = Inbox.files(List.of(folder.resolve("inbox")));
        Flow.Request asked = new Flow.Request(files, artwork, Optional.empty());
        return Flow.decide(ID, asked, rules(), Memory.NOTHING, stage -> {});
    }

    /** A run that is published, if it has news, and remembered. */
    public Run publish() throws IOException, InboxFault, RulebookFaults {
        return publish(ID.date());
    }

    public Run publish(LocalDate day) throws IOException, InboxFault, RulebookFaults {
        List<Path> files = Inbox.files(List.of(folder.resolve("inbox")));
        Flow.Request asked = new Flow.Request(files, artwork, Optional.empty());
        Rulebook rules = rules();
        try (Outbox place = Outbox.open(outbox(), waiting -> {});
                Ledger ledger = Ledger.open(outbox())) {
            RunId id = place.nextRun(day, ledger.highestRun(day));
            Run run = Flow.decide(id, asked, rules, ledger, stage -> {});
            if (Flow.hasNews(run, rules)) {
                Flow.publish(run, rules, place, ledger, stage -> {});
            }
            return run;
        }
    }

    /** Takes every file out of the inbox. */
    public Stall empty() throws IOException {
        Path inbox = Files.createDirectories(folder.resolve("inbox"));
        try (Stream<Path> old = Files.list(inbox)) {
            for (Path file : old.toList()) {
                Files.delete(file);
            }
        }
        return this;
    }

    public void spoil(String... ids) {
        try (Ledger ledger = Ledger.open(outbox())) {
            List<String> unknown = ledger.spoil(List.of(ids), ID.date(), "ghosted");
            if (!unknown.isEmpty()) {
                throw new AssertionError(unknown);
            }
        }
    }

    public Path outbox() {
        return folder.resolve("outbox");
    }

    /** Mends one cell of a run's held.xlsx, as a person does, and leaves nothing else in the inbox. */
    public void dropMended(Run run, String faulty, String right) throws IOException {
        Path inbox = empty().folder.resolve("inbox");
        Path held = outbox().resolve(run.id().toString()).resolve("held.xlsx");
        try (InputStream in = Files.newInputStream(held);
                XSSFWorkbook book = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(inbox.resolve("held.xlsx"))) {
            for (Sheet sheet : book) {
                sheet.forEach(row -> row.forEach(cell -> {
                    if (cell.getStringCellValue().equals(faulty)) {
                        cell.setCellValue(right);
                    }
                }));
            }
            book.write(out);
        }
    }

    /** Each unit, held and skipped row. */
    public List<String> story() throws IOException, InboxFault, RulebookFaults {
        return story(run());
    }

    public static List<String> story(Run run) {
        List<String> story = new ArrayList<>();
        for (Unit unit : run.units()) {
            MatchedLine matched = unit.matched();
            story.add("made " + unit.id() + " " + matched.blank().sku() + " "
                    + matched.design().name());
        }
        run.held()
                .forEach(held -> story.add("held " + held.order() + " x" + held.pieces() + " "
                        + held.reason().code()));
        run.skipped()
                .forEach(skipped ->
                        story.add("skipped " + skipped.order() + " x" + skipped.pieces() + " " + skipped.code()));
        return story;
    }

    /** The texts of each piece, whether it is made yet or not: "Q1-1 name=Ada". */
    public static List<String> texts(Run run) {
        List<String> texts = new ArrayList<>();
        for (OwedLine owed : run.owed().lines()) {
            for (Piece piece : owed.matched().pieces()) {
                String words = piece.texts().entrySet().stream()
                        .map(text -> text.getKey() + "=" + text.getValue())
                        .collect(Collectors.joining(" "));
                texts.add((owed.matched().line().order() + "-" + piece.number() + " " + words).strip());
            }
        }
        return texts;
    }

    /** The only held row. */
    public HeldRow held() throws IOException, InboxFault, RulebookFaults {
        List<HeldRow> held = run().held();
        if (held.size() != 1) {
            throw new AssertionError(held);
        }
        return held.get(0);
    }
}
