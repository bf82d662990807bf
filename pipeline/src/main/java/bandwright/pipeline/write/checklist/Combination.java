package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Material;
import bandwright.rules.blanks.TapeWay;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.Cautions;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.units.Temperature;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Everything that decides how a load is worked on: two loads of one combination take the same steps under the same
 * cautions. A white mug and a pink-handled one are one combination in a mug press; a glitter mug, a tumbler with a lid
 * or a glass mug is another.
 *
 * @param figures what is set and what follows, of every row of settings that stands behind the load
 * @param cautions all that speak about it, in the order of the table
 */
record Combination(
        HeatSource source,
        Set<Figures> figures,
        List<Caution> cautions,
        Set<TapeWay> ways,
        Set<String> parts,
        boolean needsGloves,
        boolean holdsGlass) {
    Combination {
        cautions = List.copyOf(cautions);
    }

    /** The cells of press-settings.csv that a person at the press follows. */
    record Figures(Optional<Temperature> temperature, int timeSeconds, String pressure, String peel, String rest) {
        static Figures of(PressSetting setting) {
            return new Figures(
                    setting.temperature(), setting.timeSeconds(), setting.pressure(), setting.peel(), setting.rest());
        }
    }

    static Combination of(Load load, Rulebook rules) {
        Set<Figures> figures = new LinkedHashSet<>();
        Set<Blank> blanks = new LinkedHashSet<>();
        Set<TapeWay> ways = new LinkedHashSet<>();
        Set<String> parts = new LinkedHashSet<>();
        for (Unit unit : load.units()) {
            Blank blank = unit.matched().blank();
            figures.add(Figures.of(unit.matched().setting()));
            blanks.add(blank);
            ways.add(TapeWay.of(blank));
            parts.addAll(blank.parts());
        }
        List<PressSetting> about = blanks.stream()
                .flatMap(blank ->
                        rules.pressSettings().about(blank, load.source().kind()).stream())
                .toList();
        return new Combination(
                load.source(),
                figures,
                cautions(blanks, about, load.source(), rules),
                ways,
                parts,
                about.stream().anyMatch(PressSetting::gloves),
                blanks.stream().anyMatch(blank -> blank.material() == Material.GLASS));
    }

    /** Those that speak about its blanks, and those that any row of settings about them names: cautions add up. */
    private static List<Caution> cautions(
            Set<Blank> blanks, List<PressSetting> about, HeatSource source, Rulebook rules) {
        Set<String> named = new TreeSet<>();
        about.forEach(setting -> named.addAll(setting.cautions()));
        return rules.cautions().list().stream()
                .filter(caution -> named.contains(caution.code())
                        || blanks.stream().anyMatch(blank -> Cautions.applies(caution, blank, source.kind())))
                .toList();
    }
}
