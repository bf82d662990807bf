package bandwright.pipeline.write.index;

import bandwright.pipeline.Run;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.size.Note;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.SheetPage;
import bandwright.rules.Rulebook;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The run at a glance, opened first: index.html. It works from the disk, without network and without script. */
public final class IndexPage {
    /** The name in the run's folder. */
    public static final String FILE = "index.html";

    private final Run run;
    private final Rulebook rules;
    private final List<String> others;
    private final Html html = new Html();

    private IndexPage(Run run, Rulebook rules, List<String> others) {
        this.run = run;
        this.rules = rules;
        this.others = others;
    }

    /** The page of a run whose folder also holds these files. */
    public static OutFile file(Run run, Rulebook rules, List<String> others) {
        return new OutFile(
                FILE, out -> out.write(new IndexPage(run, rules, others).page().getBytes(StandardCharsets.UTF_8)));
    }

    private String page() {
        String title = Words.say("index.title", run.id());
        html.open("html", "lang", "en").open("head").open("meta", "charset", "utf-8");
        html.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.line("title", title).style(css()).close("head").open("body");
        html.open("header").line("h1", title);
        html.line("p", counts(), "class", "soft").close("header").open("main");
        todo();
        held();
        sheets();
        pieces();
        unconfirmed();
        files();
        html.close("main").close("body").close("html");
        return html.toString();
    }

    private String counts() {
        String shop = rules.shop().name();
        String counts = Words.say(
                "index.counts",
                run.units().size(),
                run.tiled().sheets().size(),
                run.tiled().atLeast(),
                run.held().size(),
                run.skipped().size());
        return shop.isEmpty() ? counts : shop + " \u00b7 " + counts;
    }

    private void todo() {
        html.line("h2", Words.say("index.todo")).open("ol", "class", "first");
        if (!run.orders().unread().isEmpty()) {
            html.line("li", Words.say("index.todo-files", run.orders().unread().size()));
        }
        if (others.contains("held.xlsx")) {
            html.open("li")
                    .text(Words.say("index.todo-held", run.held().size()))
                    .text(" ");
            html.link("held.xlsx", "held.xlsx").close("li");
        }
        late();
        List<SheetFile> sheets = SheetFiles.of(run.tiled()).files();
        if (!sheets.isEmpty()) {
            html.open("li").text(Words.say("index.todo-print")).text(" ");
            for (SheetFile sheet : sheets) {
                String pages = Words.say(
                        "index.pages", sheet.shortName(), sheet.sheets().size());
                html.link(sheet.name(), pages).text(" ");
            }
            html.close("li");
        }
        step("pick-list.pdf", "index.todo-pick");
        step("press-checklist.pdf", "index.todo-press");
        step("packing-slips.pdf", "index.todo-pack");
        step("orders.xlsx", "index.todo-orders");
        html.close("ol");
    }

    private void step(String file, String key) {
        if (others.contains(file)) {
            html.open("li").text(Words.say(key)).text(" ").link(file, file).close("li");
        }
    }

    private void late() {
        LocalDate today = run.id().date();
        TreeSet<String> late = new TreeSet<>();
        TreeSet<String> due = new TreeSet<>();
        for (Unit unit : run.units()) {
            unit.matched().line().shipBy().ifPresent(day -> {
                if (day.isBefore(today)) {
                    late.add(unit.matched().line().order());
                } else if (!day.isAfter(today.plusDays(1))) {
                    due.add(unit.matched().line().order());
                }
            });
        }
        if (!late.isEmpty()) {
            html.line("li", Words.say("index.late", String.join(", ", late)));
        }
        if (!due.isEmpty()) {
            html.line("li", Words.say("index.due", String.join(", ", due)));
        }
    }

    private void held() {
        if (run.held().isEmpty()) {
            return;
        }
        html.line("h2", Words.say("index.held"));
        table("index.where", "index.order", "index.pieces", "index.column", "index.reason", "index.cure");
        for (HeldRow held : run.held()) {
            html.open("tr").line("th", place(held.row().from()), "scope", "row");
            html.line("td", held.order()).line("td", Integer.toString(held.pieces()));
            html.line("td", held.column()).line("td", held.reason().message());
            html.line("td", held.reason().cure()).close("tr");
        }
        endTable();
    }

    private static String place(From from) {
        String sheet = from.sheet().map(name -> ", " + name).orElse("");
        return Words.say("index.place", from.file() + sheet, from.row());
    }

    private void sheets() {
        if (run.tiled().sheets().isEmpty()) {
            return;
        }
        html.line("h2", Words.say("index.sheets")).open("ul", "class", "sheets");
        for (SheetPage page : SheetFiles.of(run.tiled()).pages()) {
            html.open("li");
            SheetDrawing.draw(html, page);
            String name = page.file().substring(page.file().lastIndexOf('/') + 1);
            html.link(page.file() + "#page=" + page.page(), Words.say("index.sheet", name, page.page()))
                    .close("li");
        }
        html.close("ul");
    }

    private void pieces() {
        if (run.units().isEmpty()) {
            return;
        }
        Map<String, Integer> loads = new LinkedHashMap<>();
        run.loads().forEach(load -> load.units().forEach(unit -> loads.put(unit.id(), load.number())));
        html.line("h2", Words.say("index.made"));
        table("index.piece", "index.blank", "index.design", "index.press", "index.load", "index.notes");
        for (Unit unit : run.units()) {
            html.open("tr").line("th", unit.id(), "scope", "row");
            html.line(
                    "td",
                    unit.matched().blank().sku() + ", " + unit.matched().blank().name());
            html.line("td", unit.matched().design().name());
            html.line("td", unit.matched().source().name());
            html.line("td", Integer.toString(loads.getOrDefault(unit.id(), 0)));
            String notes = unit.notes().stream()
                    .filter(note -> !note.code().equals("not-confirmed"))
                    .map(Note::message)
                    .collect(Collectors.joining(" "));
            html.line("td", notes).close("tr");
        }
        endTable();
    }

    private void unconfirmed() {
        TreeSet<String> settings = new TreeSet<>();
        for (Unit unit : run.units()) {
            if (!unit.matched().setting().isConfirmed()) {
                settings.add(Words.say(
                        "index.setting",
                        unit.matched().blank().sku(),
                        unit.matched().source().name()));
            }
        }
        if (settings.isEmpty()) {
            return;
        }
        html.line("h2", Words.say("index.unconfirmed")).line("p", Words.say("index.unconfirmed-why"));
        html.open("ul");
        settings.forEach(setting -> html.line("li", setting));
        html.close("ul");
    }

    private void files() {
        html.line("h2", Words.say("index.files"));
        table("index.file", "index.state", "index.rows", "index.message");
        for (InboxFile file : run.orders().files()) {
            String name = file.file() + file.sheet().map(sheet -> ", " + sheet).orElse("");
            html.open("tr")
                    .line("th", name, "scope", "row")
                    .line("td", file.state().word());
            html.line("td", Integer.toString(file.rows()))
                    .line("td", file.message())
                    .close("tr");
        }
        endTable();
    }

    private void table(String... heads) {
        // A table that is wider than a phone is scrolled by itself, by keys too.
        html.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", Words.say(heads[0]));
        html.open("table").open("thead").open("tr");
        List<String> names = new ArrayList<>(List.of(heads));
        names.forEach(head -> html.line("th", Words.say(head), "scope", "col"));
        html.close("tr").close("thead").open("tbody");
    }

    private void endTable() {
        html.close("tbody").close("table").close("div");
    }

    private static String css() {
        try (InputStream in =
                Objects.requireNonNull(IndexPage.class.getResourceAsStream("index.css"), "no index.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
