package bandwright.pipeline.owed;

import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.match.MatchedLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Whether two files say different things of one order, neither containing the other; or one says that a row is
 * cancelled, and another that it is wanted.
 */
final class Contradiction {
    private Contradiction() {}

    static Optional<OwedReason> of(OrderRows rows) {
        return cancelledElsewhere(rows).or(() -> different(rows.stated));
    }

    private static Optional<OwedReason> cancelledElsewhere(OrderRows rows) {
        for (SkippedRow cancelled : rows.skipped) {
            String content = RowContent.of(cancelled.row());
            String file = cancelled.row().from().file();
            for (MatchedLine line : rows.stated) {
                String other = line.line().row().from().file();
                if (!other.equals(file) && RowContent.of(line.line().row()).equals(content)) {
                    return Optional.of(new OwedReason.StatedDifferently(other, file));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<OwedReason> different(List<MatchedLine> lines) {
        Map<String, Map<String, Integer>> files = new LinkedHashMap<>();
        for (MatchedLine line : lines) {
            for (Slot slot : Slot.of(line)) {
                files.computeIfAbsent(slot.file(), any -> new TreeMap<>())
                        .merge(slot.signature().digest(), 1, Integer::sum);
            }
        }
        List<String> names = new ArrayList<>(files.keySet());
        for (int i = 0; i < names.size(); i++) {
            for (int j = i + 1; j < names.size(); j++) {
                Map<String, Integer> one = files.getOrDefault(names.get(i), Map.of());
                Map<String, Integer> other = files.getOrDefault(names.get(j), Map.of());
                if (!contains(one, other) && !contains(other, one)) {
                    return Optional.of(new OwedReason.StatedDifferently(names.get(i), names.get(j)));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean contains(Map<String, Integer> whole, Map<String, Integer> part) {
        return part.entrySet().stream().allMatch(each -> whole.getOrDefault(each.getKey(), 0) >= each.getValue());
    }
}
