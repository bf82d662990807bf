package bandwright.pipeline.write.index;

import bandwright.pipeline.RunId;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.size.Note;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Shop;
import bandwright.rules.blanks.Blank;
import bandwright.rules.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/** What is made, order by order, earliest ship-by first: one card for the like pieces of a row. */
record PieceCards(RunId run, List<Unit> units, Shop shop, Places places, Pictures pictures, ProofLinks proofs)
        implements Section {
    /** Rows whose pieces look alike are shown once. */
    private record Alike(
            From row, String sku, String design, SortedMap<String, String> texts, Transfer transfer, List<Note> notes) {
        static Alike of(Unit unit) {
            return new Alike(
                    unit.matched().line().row().from(),
                    unit.matched().blank().sku(),
                    unit.matched().design().name(),
                    unit.texts(),
                    unit.transfer(),
                    unit.notes());
        }
    }

    @Override
    public String name() {
        return "pieces";
    }

    @Override
    public boolean isEmpty() {
        return units.isEmpty();
    }

    @Override
    public void writeTo(Html html) {
        html.line("p", Words.say("index.pieces-how"), "class", "lead");
        for (List<Unit> order : orders()) {
            OrderLine line = order.get(0).matched().line();
            html.open("section", "class", "order").open("h3").text(line.order());
            shipBy(order).ifPresent(day -> html.text(" ").line("span", shipBy(day), "class", "soft"));
            html.close("h3");
            proofs.write(html, line.row().from());
            html.open("ul", "class", "cards");
            alike(order).values().forEach(pieces -> card(html, pieces));
            html.close("ul").close("section");
        }
    }

    private List<List<Unit>> orders() {
        Map<List<String>, List<Unit>> orders = new LinkedHashMap<>();
        for (Unit unit : units) {
            OrderLine line = unit.matched().line();
            orders.computeIfAbsent(List.of(line.site(), line.order()), key -> new ArrayList<>())
                    .add(unit);
        }
        List<List<Unit>> sorted = new ArrayList<>(orders.values());
        sorted.sort(Comparator.comparing(order -> shipBy(order).orElse(LocalDate.MAX)));
        return sorted;
    }

    private static Optional<LocalDate> shipBy(List<Unit> order) {
        return order.stream()
                .flatMap(unit -> unit.matched().line().shipBy().stream())
                .min(Comparator.naturalOrder());
    }

    private String shipBy(LocalDate day) {
        return Words.say(day.isBefore(run.date()) ? "index.ship-by-late" : "index.ship-by", day);
    }

    private static Map<Alike, List<Unit>> alike(List<Unit> order) {
        Map<Alike, List<Unit>> alike = new LinkedHashMap<>();
        for (Unit unit : order) {
            alike.computeIfAbsent(Alike.of(unit), any -> new ArrayList<>()).add(unit);
        }
        return alike;
    }

    private void card(Html html, List<Unit> pieces) {
        Unit unit = pieces.get(0);
        Blank blank = unit.matched().blank();
        String design = unit.matched().design().name();
        html.open("li");
        pictures.piece(html, unit, Words.say("index.picture", design, blank.sku()));
        html.open("div").line("p", Words.say("index.count", pieces.size(), blank.sku()), "class", "what");
        html.line("p", blank.name()).line("p", Words.say("index.design", design));
        unit.texts().forEach((field, text) -> html.line("p", Words.say("index.text", field, text)));
        html.line("p", unit.matched().source().name());
        PlanPicture.write(html, unit, shop);
        for (Note note : unit.notes()) {
            if (!note.code().equals("not-confirmed")) { // has a section of its own
                html.line("p", note.message(), "class", "note");
            }
        }
        html.open("ul", "class", "units");
        for (Unit piece : pieces) {
            html.open("li", "id", Places.anchor(piece))
                    .line("strong", piece.id())
                    .text(" ");
            places.write(html, piece);
            html.close("li");
        }
        html.close("ul").close("div").close("li");
    }
}
