package bandwright.pipeline.write.picklist;

import bandwright.pipeline.Run;
import bandwright.pipeline.past.Past;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.spoilage.Spoilage;
import bandwright.rules.stock.Spares;
import bandwright.rules.stock.StockNeed;
import bandwright.rules.table.NaturalOrder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One blank of the pick list.
 *
 * @param lots its pieces by the heat source that presses them, by its id
 */
record PickLine(Blank blank, StockNeed need, List<SourceLot> lots) {
    /** In the order of the shelves, A2 before A10; blanks without a shelf come last, by sku. */
    private static final Comparator<PickLine> SHELVES = Comparator.comparing(
                    (PickLine line) -> line.blank.shelf().isEmpty())
            .thenComparing(line -> line.blank.shelf(), NaturalOrder.INSTANCE)
            .thenComparing(line -> line.blank.sku(), NaturalOrder.INSTANCE);

    /** Pieces of one heat source, and how many of such pieces are spoiled. */
    record SourceLot(HeatSource source, Spares.Lot lot) {
        Spoilage spoilage() {
            return lot.spoilage();
        }
    }

    PickLine {
        lots = List.copyOf(lots);
    }

    static List<PickLine> of(Run run, Rulebook rules) {
        Map<Blank, Map<HeatSource, Integer>> pieces = new LinkedHashMap<>();
        for (Unit unit : run.units()) {
            pieces.computeIfAbsent(unit.matched().blank(), blank -> new LinkedHashMap<>())
                    .merge(unit.matched().source(), 1, Integer::sum);
        }
        return pieces.entrySet().stream()
                .map(entry -> of(entry.getKey(), entry.getValue(), rules, run.past()))
                .sorted(SHELVES)
                .toList();
    }

    private static PickLine of(Blank blank, Map<HeatSource, Integer> pieces, Rulebook rules, Past past) {
        List<SourceLot> lots = new ArrayList<>();
        pieces.forEach((source, count) -> {
            Spoilage spoilage = past.experience()
                    .spoilage(blank.sku(), source.id(), rules.shop().spoilRate());
            lots.add(new SourceLot(source, new Spares.Lot(count, spoilage)));
        });
        lots.sort(Comparator.comparing(lot -> lot.source().id()));
        StockNeed need = new StockNeed(
                lots.stream().mapToInt(lot -> lot.lot().pieces()).sum(),
                Spares.of(lots.stream().map(SourceLot::lot).toList()),
                rules.stock().find(blank.sku()).map(count -> count.less(past.takenOf(blank.sku()))));
        return new PickLine(blank, need, lots);
    }
}
