package bandwright.pipeline.write.workbook;

import bandwright.pipeline.RowFate;
import bandwright.pipeline.Run;
import bandwright.pipeline.past.Experience;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.rules.blanks.Blank;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a good piece costs in blank, paper, ink and spoiled pieces. A blank of 2.00 and half a sheet of 0.20 at 3 % spoiled:
 * 2.10 and 0.06 for the spoiled ones, as 2.10 x 0.03 / 0.97. A page of a roll costs by its length. The waste of a sheet
 * is shared by the pictures on it, by area. Ink is counted where the printer's row has a price. The rate is the shop's
 * own for that blank and heat source, where the ledger has seen enough.
 */
final class UnitCosts {
    private static final double MM2_PER_M2 = 1e6;

    private final Map<String, Place> places = new HashMap<>();
    private final UnitInks inks;
    private final Experience experience;
    private final double said;

    /** Which page a piece is on, and how much of the page it pays for. */
    private record Place(PaperRoom room, double share) {}

    /** The parts of what one piece costs; spoilage is what its share of spoiled ones took. */
    record Parts(double blank, double paper, double ink, double spoilage) {
        double sum() {
            return blank + paper + ink + spoilage;
        }
    }

    UnitCosts(Run run, UnitInks inks, double spoilRate) {
        this.inks = inks;
        this.experience = run.past().experience();
        this.said = spoilRate;
        run.tiled().sheets().forEach(this::share);
    }

    private void share(Sheet sheet) {
        double all = sheet.placed().stream()
                .mapToDouble(placed -> area(placed.box()))
                .sum();
        for (Placed placed : sheet.placed()) {
            places.put(placed.unit().id(), new Place(sheet.room(), area(placed.box()) / all));
        }
    }

    /** The mean of the row's units, to two decimals; empty where a part of it is not known. */
    Optional<BigDecimal> of(RowFate fate) {
        List<Parts> parts =
                fate.units().stream().flatMap(unit -> parts(unit).stream()).toList();
        if (parts.isEmpty() || parts.size() < fate.units().size()) {
            return Optional.empty();
        }
        double mean = parts.stream().mapToDouble(Parts::sum).sum() / parts.size();
        return Optional.of(BigDecimal.valueOf(mean).setScale(2, RoundingMode.HALF_UP));
    }

    /** Empty where something is {@link #unknown}. */
    Optional<Parts> parts(Unit unit) {
        if (!unknown(unit).isEmpty()) {
            return Optional.empty();
        }
        Blank kind = unit.matched().blank();
        double blank = kind.cost().orElseThrow().doubleValue();
        double paper =
                room(unit).cost().orElseThrow().doubleValue() * place(unit).share();
        double ink = inkCost(unit)
                .map(price -> price.doubleValue() * inks.mm2(unit).orElseThrow() / MM2_PER_M2)
                .orElse(0.0);
        double rate = rate(unit);
        return Optional.of(new Parts(blank, paper, ink, (blank + paper + ink) * rate / (1 - rate)));
    }

    /** What is missing to say what a piece costs, and where to write it. */
    List<String> unknown(Unit unit) {
        List<String> unknown = new ArrayList<>();
        Blank blank = unit.matched().blank();
        if (blank.cost().isEmpty()) {
            unknown.add(Words.say("orders-workbook.no-blank-cost", blank.sku()));
        }
        if (room(unit).cost().isEmpty()) {
            unknown.add(Words.say(
                    "orders-workbook.no-paper-cost", room(unit).paper().id()));
        }
        if (inkCost(unit).isPresent() && inks.mm2(unit).isEmpty()) {
            unknown.add(Words.say("orders-workbook.no-ink-area", unit.id()));
        }
        if (rate(unit) >= 1) {
            unknown.add(Words.say("orders-workbook.all-spoiled"));
        }
        return unknown;
    }

    /** The price of a square metre of full ink, where the printer's row has one. */
    Optional<BigDecimal> inkCost(Unit unit) {
        return room(unit).printer().inkCost();
    }

    PaperRoom room(Unit unit) {
        return place(unit).room();
    }

    private Place place(Unit unit) {
        return Optional.ofNullable(places.get(unit.id()))
                .orElseThrow(() -> new IllegalStateException(unit.id() + " is on no sheet"));
    }

    private double rate(Unit unit) {
        return experience
                .spoilage(unit.matched().blank().sku(), unit.matched().source().id(), said)
                .rate();
    }

    private static double area(Box box) {
        return box.width().mm() * box.height().mm();
    }
}
