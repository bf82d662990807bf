package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.Cautions;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Loads one after the other that are set alike and hold the same kinds of blank: their settings are printed once. */
record Series(List<Load> loads) {
    Series {
        loads = List.copyOf(loads);
    }

    static List<Series> of(List<Load> loads) {
        List<Series> all = new ArrayList<>();
        List<Load> open = new ArrayList<>();
        for (Load load : loads) {
            if (!open.isEmpty() && !isAlike(open.get(open.size() - 1), load)) {
                all.add(new Series(open));
                open.clear();
            }
            open.add(load);
        }
        if (!open.isEmpty()) {
            all.add(new Series(open));
        }
        return all;
    }

    private static boolean isAlike(Load one, Load next) {
        return one.source().equals(next.source())
                && one.machine() == next.machine()
                && settings(one).equals(settings(next))
                && blanks(Stream.of(one)).equals(blanks(Stream.of(next)));
    }

    Load first() {
        return loads.get(0);
    }

    HeatSource source() {
        return first().source();
    }

    List<Unit> units() {
        return loads.stream().flatMap(load -> load.units().stream()).toList();
    }

    /** The kinds of blank in it, in the order in which they come. */
    Set<Blank> blanks() {
        return blanks(loads.stream());
    }

    private static Set<Blank> blanks(Stream<Load> loads) {
        Set<Blank> blanks = new LinkedHashSet<>();
        loads.flatMap(load -> load.units().stream())
                .forEach(unit -> blanks.add(unit.matched().blank()));
        return blanks;
    }

    /** Every row of settings that stands behind it; they are alike in heat, not always in what they warn of. */
    private static Set<PressSetting> settings(Load load) {
        Set<PressSetting> settings = new LinkedHashSet<>();
        load.units().forEach(unit -> settings.add(unit.matched().setting()));
        return settings;
    }

    /** The blanks for which no row of their own is confirmed. */
    List<Blank> unconfirmed() {
        return units().stream()
                .filter(unit -> !unit.matched().setting().isConfirmed())
                .map(unit -> unit.matched().blank())
                .distinct()
                .toList();
    }

    /** Whether any row about any of its blanks asks for gloves. */
    boolean needsGloves(Rulebook rules) {
        return about(rules).anyMatch(PressSetting::gloves);
    }

    /** The cautions before that step: those that speak about its blanks, and those that its settings name. */
    List<Caution> cautions(CautionStep step, Rulebook rules) {
        Set<String> named = new TreeSet<>();
        about(rules).forEach(setting -> named.addAll(setting.cautions()));
        return rules.cautions().list().stream()
                .filter(caution -> caution.step() == step)
                .filter(caution -> named.contains(caution.code())
                        || blanks().stream().anyMatch(blank -> Cautions.applies(caution, blank, source().kind())))
                .toList();
    }

    private Stream<PressSetting> about(Rulebook rules) {
        return blanks().stream().flatMap(blank -> rules.pressSettings().about(blank, source().kind()).stream());
    }
}
