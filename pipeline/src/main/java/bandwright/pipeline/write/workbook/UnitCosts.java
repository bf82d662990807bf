package bandwright.pipeline.write.workbook;

import bandwright.pipeline.RowFate;
import bandwright.pipeline.Run;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Box;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a good piece costs in blank, paper and ink: (blank + its share of the sheet + ink) / (1 - spoil rate). A blank of 2.00 and
 * half a sheet of 0.20 at 3 % spoiled: 2.10 / 0.97 = 2.16. A page of a roll costs by its length. The waste of a
 * sheet is shared by the pictures on it, by area. Ink is counted where the printer's row has a price. Empty where a cost is not known.
 */
final class UnitCosts {
    private final Map<String, Double> paper = new HashMap<>();
    private static final double MM2_PER_M2 = 1e6;

    private final UnitInks inks;
    private final double good;

    UnitCosts(Run run, UnitInks inks, double spoilRate) {
        this.inks = inks;
        good = 1 - spoilRate;
        run.tiled().sheets().forEach(this::share);
    }

    private void share(Sheet sheet) {
        double all = sheet.placed().stream()
                .mapToDouble(placed -> area(placed.box()))
                .sum();
        sheet.room().cost().ifPresent(cost -> {
            for (Placed placed : sheet.placed()) {
                double share = cost.doubleValue() * area(placed.box()) / all;
                paper.put(
                        placed.unit().id(),
                        share + ink(placed.unit(), sheet.room().printer()));
            }
        });
    }

    private double ink(Unit unit, Printer printer) {
        return printer.inkCost()
                .flatMap(cost -> inks.mm2(unit).map(mm2 -> mm2 / MM2_PER_M2 * cost.doubleValue()))
                .orElse(0.0);
    }

    /** The mean of the row's units, to two decimals. */
    Optional<BigDecimal> of(RowFate fate) {
        List<Double> costs =
                fate.units().stream().flatMap(unit -> cost(unit).stream()).toList();
        if (costs.isEmpty() || costs.size() < fate.units().size() || good <= 0) {
            return Optional.empty();
        }
        double mean = costs.stream().mapToDouble(Double::doubleValue).sum() / costs.size();
        return Optional.of(BigDecimal.valueOf(mean / good).setScale(2, RoundingMode.HALF_UP));
    }

    private Optional<Double> cost(Unit unit) {
        return Optional.ofNullable(paper.get(unit.id()))
                .flatMap(sheet -> unit.matched().blank().cost().map(blank -> blank.doubleValue() + sheet));
    }

    private static double area(Box box) {
        return box.width().mm() * box.height().mm();
    }
}
