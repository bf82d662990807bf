package bandwright.pipeline.load;

import bandwright.pipeline.size.Unit;
import bandwright.pipeline.size.Urgency;
import bandwright.rules.Rulebook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which pieces are pressed together, and when: six mugs in a press for one become six loads, one after the other, those
 * that ship first before the rest. One person does one thing at a time, on one machine of each heat source.
 */
public final class Loading {
    private Loading() {}

    /** Every unit ends in exactly one load. */
    public static List<Load> all(List<Unit> units, Rulebook rules) {
        Map<Likeness, List<Unit>> alike = new LinkedHashMap<>();
        units.stream().sorted(Urgency.OF_UNIT).forEach(unit -> alike.computeIfAbsent(
                        Likeness.of(unit), key -> new ArrayList<>())
                .add(unit));
        List<Series> waiting = new ArrayList<>();
        alike.forEach((likeness, pieces) -> waiting.add(new Series(likeness, pieces)));
        return new Day(waiting).loads();
    }
}
