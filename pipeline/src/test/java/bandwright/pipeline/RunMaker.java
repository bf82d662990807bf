package bandwright.pipeline;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.Orders;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.load.PressDay;
import bandwright.pipeline.owed.Owed;
import bandwright.pipeline.owed.OwedLine;
import bandwright.pipeline.past.Past;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.rows.Row;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Rotation;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.tile.Tiled;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Builds a run row by row; its lists can be damaged before {@link #run} to see that the damage is found. */
public final class RunMaker {
    public final List<OrderLine> lines = new ArrayList<>();
    public final List<Unit> units = new ArrayList<>();
    public final List<HeldRow> intakeHeld = new ArrayList<>();
    public final List<HeldRow> held = new ArrayList<>();
    public final List<SkippedRow> intakeSkipped = new ArrayList<>();
    public final List<SkippedRow> skipped = new ArrayList<>();
    public final List<Row> empty = new ArrayList<>();
    public final List<Load> loads = new ArrayList<>();
    public final List<Sheet> sheets = new ArrayList<>();
    public final Map<List<String>, Integer> read = new LinkedHashMap<>();

    /** One row of each end: made 2, part 1 of 3, held, skipped, empty. */
    public static RunMaker weekend() {
        RunMaker maker = new RunMaker();
        maker.line(GiftShop.row(GiftShop.from(2), GiftShop.HEADER, "Q1042", "mug 11", "tern.jpg", "2", "Ada"), 2, 2, 0);
        maker.line(GiftShop.row(GiftShop.from(3), GiftShop.HEADER, "0071", "MUG-11-W", "tern.jpg", "3"), 3, 1, 2);
        maker.hold(GiftShop.row(GiftShop.from(4), GiftShop.HEADER, "Q1046", "MUG-11-W", "storm-lamp.jpg", "1"), 1);
        maker.skip(GiftShop.row(GiftShop.from(5), GiftShop.HEADER, "Q1001", "MUG-11-W", "tern.jpg", "1"), 1);
        maker.empty(GiftShop.row(GiftShop.from(6), GiftShop.HEADER, "", "", "", ""));
        return maker.placed();
    }

    public RunMaker line(Row row, int quantity, int made, int heldPieces) {
        count(row);
        OrderLine line = GiftShop.line(row, quantity);
        lines.add(line);
        for (int piece = 1; piece <= made; piece++) {
            units.add(GiftShop.unit(line, piece, GiftShop.MUG));
        }
        if (heldPieces > 0) {
            held.add(GiftShop.held(row, heldPieces));
        }
        return this;
    }

    public RunMaker hold(Row row, int pieces) {
        count(row);
        intakeHeld.add(GiftShop.held(row, pieces));
        held.add(GiftShop.held(row, pieces));
        return this;
    }

    public RunMaker skip(Row row, int pieces) {
        count(row);
        intakeSkipped.add(GiftShop.skipped(row, pieces));
        skipped.add(GiftShop.skipped(row, pieces));
        return this;
    }

    public RunMaker empty(Row row) {
        count(row);
        empty.add(row);
        return this;
    }

    private void count(Row row) {
        read.merge(List.of(row.from().file(), row.from().sheet().orElse("")), 1, Integer::sum);
    }

    /** Two units a sheet, one a load. */
    public RunMaker placed() {
        for (int i = 0; i < units.size(); i++) {
            int load = loads.size() + 1;
            loads.add(new Load(
                    load,
                    GiftShop.CLAMP,
                    1,
                    GiftShop.setting(),
                    load * 300,
                    load * 300 + 240,
                    List.of(units.get(i)),
                    false));
        }
        for (int i = 0; i < units.size(); i += 2) {
            List<Placed> placed = new ArrayList<>();
            for (int k = i; k < Math.min(i + 2, units.size()); k++) {
                placed.add(placed(units.get(k), k + 1, 6.345 + 100 * (k - i)));
            }
            sheets.add(new Sheet(GiftShop.ROOM, placed));
        }
        return this;
    }

    public static Placed placed(Unit unit, int load, double x) {
        Length turnedWidth = unit.transfer().height();
        Length turnedHeight = unit.transfer().width();
        Box box = new Box(Length.mm(x), Length.mm(40), turnedWidth, turnedHeight);
        return new Placed(unit, load, box, Rotation.R90, Optional.empty());
    }

    private List<OwedLine> owed() {
        return units.stream().map(Unit::matched).distinct().map(OwedLine::whole).toList();
    }

    public Run run() {
        List<InboxFile> files = new ArrayList<>();
        read.forEach((place, rows) -> files.add(new InboxFile(
                place.get(0),
                Optional.of(place.get(1)).filter(sheet -> !sheet.isEmpty()),
                "",
                rows,
                InboxFile.State.READ,
                "")));
        return new Run(
                GiftShop.id(),
                new Orders(files, lines, intakeHeld, intakeSkipped, empty),
                Past.NONE,
                new Owed(owed(), held, skipped, List.of()),
                units,
                List.of(),
                held,
                skipped,
                new PressDay(loads, List.of(), List.of(), 0, List.of()),
                new Tiled(sheets, Math.min(1, sheets.size())),
                new Sights());
    }
}
