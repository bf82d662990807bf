package bandwright.pipeline.load;

import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.size.Unit;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.table.Names;

/** What the pieces of one load have alike: the heat source, and with it the covering; temperature, time and pressure. */
record Likeness(String source, double celsius, int timeSeconds, String pressure) {
    static Likeness of(Unit unit) {
        MatchedLine line = unit.matched();
        PressSetting setting = line.setting();
        double celsius = setting.temperature().map(t -> t.celsius()).orElse(0.0);
        return new Likeness(
                Names.fold(line.source().id()), celsius, setting.timeSeconds(), Names.fold(setting.pressure()));
    }

    /** How much of a load one piece takes: its blank's oven places in an oven, elsewhere one. */
    static int places(Unit unit) {
        HeatSource source = unit.matched().source();
        return source.kind().fillsByPlaces()
                ? Math.max(1, unit.matched().blank().ovenPlaces())
                : 1;
    }
}
