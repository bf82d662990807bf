package bandwright.pipeline.write.checklist;

import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.HeatKind;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** What stands further up on the checklist already, and at which load, so that later loads can point there. */
final class Above {
    private final Set<String> cautions = new HashSet<>();
    private final Map<Combination, Integer> steps = new HashMap<>();
    private final Map<String, Integer> listings = new HashMap<>();
    private boolean hasGlass;

    /** Whether the caution is printed for the first time. */
    boolean isNew(Caution caution) {
        return cautions.add(caution.code());
    }

    /** The load at which the steps of that combination stand in full; empty = they are to be printed here. */
    OptionalInt steps(Combination combination, int load) {
        return earlier(steps, combination, load);
    }

    /** The load at which there is room for the listing's figures of that blank; empty = it is to be given here. */
    OptionalInt listing(Blank blank, HeatKind kind, int load) {
        return earlier(listings, kind.word() + "\n" + blank.sku(), load);
    }

    /** Whether this is the first glass. */
    boolean isFirstGlass() {
        boolean isFirst = !hasGlass;
        hasGlass = true;
        return isFirst;
    }

    private static <K> OptionalInt earlier(Map<K, Integer> loads, K key, int load) {
        if (loads.containsKey(key)) {
            return OptionalInt.of(loads.get(key));
        }
        loads.put(key, load);
        return OptionalInt.empty();
    }
}
