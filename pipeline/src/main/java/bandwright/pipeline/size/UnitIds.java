package bandwright.pipeline.size;

import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.rows.PlainName;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Names units: order-line-piece, Q1042-1-2, unique within a run. A name that is taken gets its selling site in front,
 * then a number behind: harbour-Q1042-1-2, harbour-Q1042-1-2-2.
 */
final class UnitIds {
    private final Set<String> taken;
    private final Map<String, Integer> lastNumber = new HashMap<>();

    /** @param known names that are given away for ever */
    UnitIds(Set<String> known) {
        taken = new HashSet<>(known);
    }

    /** A name that was never given before; a remake's says that it is one: Q1042-1-2-r1. */
    String next(OrderLine line, int piece, boolean isRemake) {
        String name = PlainName.of(line.order()) + "-" + PlainName.of(line.line()) + "-" + piece;
        if (isRemake) {
            return numbered(name + "-r", 1);
        }
        if (taken.add(name)) {
            return name;
        }
        if (!line.site().isEmpty()) {
            name = PlainName.of(line.site()) + "-" + name;
        }
        return taken.add(name) ? name : numbered(name + "-", 2);
    }

    private String numbered(String name, int first) {
        int number = lastNumber.getOrDefault(name, first - 1) + 1;
        while (!taken.add(name + number)) {
            number++;
        }
        lastNumber.put(name, number);
        return name + number;
    }
}
