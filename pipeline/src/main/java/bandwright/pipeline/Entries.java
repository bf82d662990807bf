package bandwright.pipeline;

import bandwright.pipeline.held.HeldFile;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.RowSites;
import bandwright.pipeline.ledger.RunEntry;
import bandwright.pipeline.owed.OwedLine;
import bandwright.pipeline.owed.OwedPiece;
import bandwright.pipeline.owed.RowOrigin;
import bandwright.pipeline.past.Heating;
import bandwright.pipeline.past.OrderKey;
import bandwright.pipeline.past.PastHold;
import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.SheetPage;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Sites;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the ledger is to remember of a run: each unit with its sheet and load, and each row that was held. */
final class Entries {
    private final Run run;
    private final RowSites sites;
    private final Map<String, String> sheets = new HashMap<>();
    private final Map<String, Integer> loads = new HashMap<>();
    private final Map<Piece, OwedPiece> owed = new HashMap<>();
    /** Rows of each order of a file so far: a row without a number of its own goes by its place among them. */
    private final Map<List<String>, Integer> places = new HashMap<>();

    private record Piece(From row, int number) {}

    private Entries(Run run, Sites sites) {
        this.run = run;
        this.sites = new RowSites(run.orders().files(), sites);
        for (SheetPage page : SheetFiles.of(run.tiled()).pages()) {
            String file = page.file().substring(page.file().lastIndexOf('/') + 1);
            String words = Words.say("ledger.sheet", file, page.page());
            page.sheet().placed().forEach(placed -> sheets.put(placed.unit().id(), words));
        }
        run.loads().forEach(load -> load.units().forEach(unit -> loads.put(unit.id(), load.number())));
        for (OwedLine line : run.owed().lines()) {
            From from = line.matched().line().row().from();
            line.pieces().forEach(piece -> owed.put(new Piece(from, piece.piece()), piece));
        }
    }

    static RunEntry of(Run run, List<String> contents, Sites sites) {
        Entries entries = new Entries(run, sites);
        List<PastPiece> pieces = run.units().stream().map(entries::piece).toList();
        List<PastHold> holds = new ArrayList<>();
        for (RowFate fate : RowFates.of(run)) {
            String line = entries.lineOf(fate);
            for (HeldRow held : fate.held()) {
                holds.add(entries.hold(fate, line, held));
            }
        }
        return new RunEntry(run.id(), pieces, holds, contents);
    }

    /** Whether a person has something new to see: a unit, or a row that was not held before for the same reason. */
    static boolean hasNews(Run run, Sites sites) {
        return !run.units().isEmpty()
                || of(run, List.of(), sites).holds().stream()
                        .anyMatch(hold -> !run.past().wasHeld(hold.order(), hold.content(), hold.code()));
    }

    private PastPiece piece(Unit unit) {
        OrderLine line = unit.matched().line();
        OwedPiece piece = Optional.ofNullable(owed.get(new Piece(line.row().from(), unit.piece())))
                .orElseThrow(() -> new IllegalStateException("nobody owes " + unit.id()));
        return new PastPiece(
                unit.id(),
                run.id().toString(),
                new OrderKey(line.site(), line.order()),
                line.line(),
                unit.piece(),
                piece.signature(),
                unit.matched().blank().sku(),
                RowOrigin.words(unit.matched(), unit.texts()),
                sheets.getOrDefault(unit.id(), ""),
                loads.getOrDefault(unit.id(), 0),
                piece.content(),
                unit.matched().source().id(),
                Heating.of(unit.matched().setting()),
                piece.remakeOf(),
                Optional.empty());
    }

    private PastHold hold(RowFate fate, String line, HeldRow held) {
        String site = fate.line().map(OrderLine::site).orElseGet(() -> sites.of(fate.row()));
        OrderKey order = new OrderKey(site, held.order());
        String origin = RowOrigin.of(fate.row());
        // A row that was mended in vain is still the row that it was when it first was read.
        Optional<PastHold> first =
                HeldFile.findOrigin(fate.row()).isPresent() ? run.past().findHold(order, origin) : Optional.empty();
        return new PastHold(
                order,
                line,
                origin,
                first.map(PastHold::content).orElseGet(() -> RowOrigin.content(fate.row())),
                held.reason().code(),
                fate.units().size());
    }

    private String lineOf(RowFate fate) {
        String site = fate.line().map(OrderLine::site).orElseGet(() -> sites.of(fate.row()));
        int place = places.merge(List.of(fate.row().from().file(), site, fate.order()), 1, Integer::sum);
        String own = fate.row().cell(OrderField.LINE).text().strip();
        return fate.line().map(OrderLine::line).orElse(own.isEmpty() ? Integer.toString(place) : own);
    }
}
