package bandwright.pipeline.size;

import bandwright.pipeline.intake.OrderLine;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Names units: order-line-piece, Q1042-1-2, unique within a run. A name that is taken gets its selling site in front,
 * then a number behind: harbour-Q1042-1-2, harbour-Q1042-1-2-2.
 */
final class UnitIds {
    /** A label and its code must hold the name; nobody's order numbers are longer. [J] */
    private static final int LONGEST_PART = 48;

    private final Set<String> taken = new HashSet<>();
    private final Map<String, Integer> lastNumber = new HashMap<>();

    /** A name that this object never gave before. */
    String next(OrderLine line, int piece) {
        String name = plain(line.order()) + "-" + plain(line.line()) + "-" + piece;
        if (taken.add(name)) {
            return name;
        }
        if (!line.site().isEmpty()) {
            name = plain(line.site()) + "-" + name;
        }
        return taken.add(name) ? name : numbered(name);
    }

    private String numbered(String name) {
        int number = lastNumber.getOrDefault(name, 1) + 1;
        while (!taken.add(name + "-" + number)) {
            number++;
        }
        lastNumber.put(name, number);
        return name + "-" + number;
    }

    /** Only what any file system, code and shell takes as it is: A-Z a-z 0-9 . _ - */
    private static String plain(String part) {
        StringBuilder out = new StringBuilder();
        part.codePoints().limit(LONGEST_PART).forEach(c -> out.append(isPlain(c) ? (char) c : '_'));
        return out.toString();
    }

    private static boolean isPlain(int c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || "._-".indexOf(c) >= 0;
    }
}
