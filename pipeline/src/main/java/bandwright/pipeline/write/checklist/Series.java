package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Loads one after the other on one machine that are one combination, with nothing else to do between them: their steps
 * are printed once.
 */
record Series(List<Load> loads, Combination combination) {
    Series {
        loads = List.copyOf(loads);
    }

    static List<Series> of(List<Load> loads, Between between, Rulebook rules) {
        List<Series> all = new ArrayList<>();
        List<Load> open = new ArrayList<>();
        for (Load load : loads) {
            Combination combination = Combination.of(load, rules);
            boolean goesOn = !open.isEmpty()
                    && open.get(0).machine() == load.machine()
                    && !between.parts(open.get(open.size() - 1), load)
                    && all.get(all.size() - 1).combination().equals(combination);
            if (goesOn) {
                all.remove(all.size() - 1);
            } else {
                open.clear();
            }
            open.add(load);
            all.add(new Series(open, combination));
        }
        return all;
    }

    Load first() {
        return loads.get(0);
    }

    HeatSource source() {
        return combination.source();
    }

    /** What every piece in it has alike: a load's heat, time and pressure. */
    PressSetting setting() {
        return first().setting();
    }

    private List<Unit> units() {
        return loads.stream().flatMap(load -> load.units().stream()).toList();
    }

    /** The blanks that only general settings speak for. */
    Set<Blank> unconfirmed() {
        return units().stream()
                .filter(unit -> !unit.matched().setting().isConfirmed())
                .map(unit -> unit.matched().blank())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    List<Caution> cautions(CautionStep step) {
        return combination.cautions().stream()
                .filter(caution -> caution.step() == step)
                .toList();
    }

    /** What its rows of settings say in one cell, and for which skus. */
    Map<String, Set<String>> said(Function<PressSetting, String> cell) {
        Map<String, Set<String>> said = new LinkedHashMap<>();
        for (Unit unit : units()) {
            String words = cell.apply(unit.matched().setting());
            if (!words.isEmpty()) {
                said.computeIfAbsent(words, w -> new LinkedHashSet<>())
                        .add(unit.matched().blank().sku());
            }
        }
        return said;
    }
}
