package bandwright.pipeline.load;

import bandwright.pipeline.past.Past;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.size.Urgency;
import bandwright.rules.Rulebook;
import bandwright.rules.heat.HeatSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which pieces are pressed together, when, on which machine, and who is at it: six mugs in a press for one become six
 * loads, those that ship first before the rest, while the oven bakes the glasses. The plan ends as soon as one can be
 * found to end, and never later than plain list scheduling makes it.
 */
public final class Loading {
    /** How many loads may get a time while the plan is looked for; some 0.1 s. */
    private static final int PLACINGS = 60_000;

    /** A what-if is answered to the minute, so it may be looked for less long. */
    private static final int WHAT_IF_PLACINGS = 15_000;

    private final List<Unit> units;
    private final Set<String> firsts;
    private final Means means;

    private Loading(List<Unit> units, Set<String> firsts, Means means) {
        this.units = units;
        this.firsts = firsts;
        this.means = means;
    }

    /**
     * Every unit ends in exactly one load.
     *
     * @param past what was made here before
     * @param today the run's date
     */
    public static PressDay all(List<Unit> units, Rulebook rules, Past past, LocalDate today) {
        if (units.isEmpty()) {
            return PressDay.NONE;
        }
        List<Unit> urgent = units.stream().sorted(Urgency.OF_UNIT).toList();
        Set<String> firsts = new Firsts(rules.shop(), past).of(urgent);
        return new Loading(urgent, firsts, Means.of(rules, today)).day();
    }

    private PressDay day() {
        List<Series> series = series(firsts);
        Work work = ToWork.of(series, means);
        Search.Found found = Search.best(work, PLACINGS);
        return ToDay.of(
                series, work, found.slots(), whatIfs(series, found.merit().end()));
    }

    private List<Series> series(Set<String> tried) {
        Map<Likeness, List<Unit>> alike = new LinkedHashMap<>();
        units.forEach(unit -> alike.computeIfAbsent(Likeness.of(unit), key -> new ArrayList<>())
                .add(unit));
        List<Series> series = new ArrayList<>();
        alike.forEach((likeness, pieces) -> {
            int capacity = pieces.get(0).matched().source().piecesPerLoad();
            series.add(new Series(likeness, pieces.get(0).matched(), Filling.of(pieces, capacity, tried)));
        });
        return series;
    }

    private List<WhatIf> whatIfs(List<Series> series, long end) {
        List<WhatIf> whatIfs = new ArrayList<>();
        for (HeatSource source : ToWork.sources(series)) {
            whatIfs.add(whatIf(WhatIf.Case.MACHINE, Optional.of(source), series, means.withOneMore(source), end));
        }
        whatIfs.add(whatIf(WhatIf.Case.PERSON, Optional.empty(), series, means.withOneMorePerson(), end));
        if (!firsts.isEmpty()) {
            whatIfs.add(whatIf(WhatIf.Case.CONFIRMED, Optional.empty(), series(Set.of()), means, end));
        }
        return whatIfs;
    }

    /** The day as it is stays possible with more at hand: more is never later, whatever a search finds. */
    private static WhatIf whatIf(
            WhatIf.Case what, Optional<HeatSource> source, List<Series> series, Means means, long end) {
        long sooner =
                Search.best(ToWork.of(series, means), WHAT_IF_PLACINGS).merit().end();
        return new WhatIf(what, source, (int) Math.min(Integer.MAX_VALUE, Math.min(end, sooner)));
    }
}
