package bandwright.pipeline.load;

import bandwright.pipeline.size.Unit;
import bandwright.pipeline.size.Urgency;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Fills loads with alike pieces. Each load takes the most urgent piece that still fits, again and again, so that of
 * pieces of the same size none overtakes a more urgent one; a piece larger than a whole load goes alone.
 */
final class Filling {
    private Filling() {}

    /** @param units all alike, the most urgent first */
    static List<List<Unit>> of(List<Unit> units, int capacity) {
        Map<Integer, Deque<Unit>> waiting = new TreeMap<>();
        for (Unit unit : units) {
            waiting.computeIfAbsent(Likeness.places(unit), places -> new ArrayDeque<>())
                    .add(unit);
        }
        List<List<Unit>> loads = new ArrayList<>();
        for (int left = units.size();
                left > 0;
                left -= loads.get(loads.size() - 1).size()) {
            loads.add(nextLoad(waiting, capacity));
        }
        return loads;
    }

    private static List<Unit> nextLoad(Map<Integer, Deque<Unit>> waiting, int capacity) {
        List<Unit> load = new ArrayList<>();
        int free = capacity;
        // Without a limit for the first piece: what is larger than any load is pressed alone.
        Optional<Deque<Unit>> queue = mostUrgent(waiting.values());
        while (queue.isPresent()) {
            Unit unit = queue.get().remove();
            load.add(unit);
            free -= Likeness.places(unit);
            int room = free;
            queue = mostUrgent(waiting.entrySet().stream()
                    .filter(entry -> entry.getKey() <= room)
                    .map(Map.Entry::getValue)
                    .toList());
        }
        return load;
    }

    private static Optional<Deque<Unit>> mostUrgent(Collection<Deque<Unit>> queues) {
        return queues.stream()
                .filter(queue -> !queue.isEmpty())
                .min(Comparator.comparing(Deque::getFirst, Urgency.OF_UNIT));
    }
}
