package bandwright.pipeline.write.picklist;

import bandwright.pipeline.Run;
import bandwright.pipeline.past.Past;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.stock.Spares;
import bandwright.rules.stock.StockNeed;
import bandwright.rules.table.NaturalOrder;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One blank of the pick list. */
record PickLine(Blank blank, StockNeed need) {
    /** In the order of the shelves, A2 before A10; blanks without a shelf come last, by sku. */
    private static final Comparator<PickLine> SHELVES = Comparator.comparing(
                    (PickLine line) -> line.blank.shelf().isEmpty())
            .thenComparing(line -> line.blank.shelf(), NaturalOrder.INSTANCE)
            .thenComparing(line -> line.blank.sku(), NaturalOrder.INSTANCE);

    static List<PickLine> of(Run run, Rulebook rules) {
        Map<Blank, Integer> pieces = new LinkedHashMap<>();
        for (Unit unit : run.units()) {
            pieces.merge(unit.matched().blank(), 1, Integer::sum);
        }
        return pieces.entrySet().stream()
                .map(entry -> of(entry.getKey(), entry.getValue(), rules, run.past()))
                .sorted(SHELVES)
                .toList();
    }

    private static PickLine of(Blank blank, int pieces, Rulebook rules, Past past) {
        int spares = Spares.of(pieces, rules.shop().spoilRate());
        return new PickLine(
                blank,
                new StockNeed(
                        pieces,
                        spares,
                        rules.stock().find(blank.sku()).map(count -> count.less(past.takenOf(blank.sku())))));
    }
}
