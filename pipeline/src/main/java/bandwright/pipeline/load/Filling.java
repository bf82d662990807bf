package bandwright.pipeline.load;

import bandwright.pipeline.size.Unit;
import bandwright.pipeline.size.Urgency;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Fills loads with alike pieces. Each load takes the most urgent piece that still fits, again and again, so that of
 * pieces of the same size none overtakes one that ships earlier; a piece larger than a whole load goes alone. The first
 * piece of a blank that is to be tried goes alone, and no other piece of that blank before it.
 */
final class Filling {
    private final Map<Integer, List<Unit>> waiting = new TreeMap<>();
    private final Set<String> firsts;
    /** The loads in which first pieces went, by their blanks. */
    private final Map<String, Integer> tried = new HashMap<>();

    private final Set<String> toTry = new HashSet<>();
    private final List<Batch> batches = new ArrayList<>();

    private Filling(List<Unit> units, Set<String> firsts) {
        this.firsts = firsts;
        units.stream().filter(unit -> firsts.contains(unit.id())).forEach(first -> toTry.add(Firsts.blank(first)));
        units.stream().sorted(turn()).forEach(unit -> waiting.computeIfAbsent(
                        Likeness.places(unit), places -> new ArrayList<>())
                .add(unit));
    }

    /** @param units all alike, the most urgent first */
    static List<Batch> of(List<Unit> units, int capacity, Set<String> firsts) {
        Filling filling = new Filling(units, firsts);
        for (int left = units.size(); left > 0; ) {
            List<Unit> load = filling.nextLoad(capacity);
            left -= load.size();
            filling.add(load);
        }
        return filling.batches;
    }

    /** On one date the pieces to be tried go first, so that their batches wait the least. */
    private Comparator<Unit> turn() {
        return Comparator.comparing(Urgency::shipBy)
                .thenComparing(unit -> !firsts.contains(unit.id()))
                .thenComparing(Urgency.OF_UNIT);
    }

    private void add(List<Unit> load) {
        int waitsFor = load.stream()
                .mapToInt(unit -> tried.getOrDefault(Firsts.blank(unit), -1))
                .max()
                .orElse(-1);
        boolean isFirst = firsts.contains(load.get(0).id());
        if (isFirst) {
            tried.put(Firsts.blank(load.get(0)), batches.size());
        }
        batches.add(new Batch(load, isFirst, waitsFor));
    }

    private List<Unit> nextLoad(int capacity) {
        // Without a limit for the first piece: what is larger than any load is pressed alone.
        List<Unit> queue = waiting.values().stream()
                .filter(units -> !units.isEmpty())
                .min(Comparator.comparing(units -> units.get(0), turn()))
                .orElseThrow();
        List<Unit> load = new ArrayList<>(List.of(queue.remove(0)));
        if (firsts.contains(load.get(0).id())) {
            return load;
        }
        int free = capacity - Likeness.places(load.get(0));
        Optional<Unit> next = takeOne(free);
        while (next.isPresent()) {
            load.add(next.get());
            free -= Likeness.places(next.get());
            next = takeOne(free);
        }
        return load;
    }

    /** The most urgent piece that may still go in. */
    private Optional<Unit> takeOne(int free) {
        Optional<Waiting> found = Optional.empty();
        for (Map.Entry<Integer, List<Unit>> queue : waiting.entrySet()) {
            if (queue.getKey() <= free) {
                Optional<Waiting> next = nextOf(queue.getValue());
                if (next.isPresent()
                        && (found.isEmpty()
                                || turn().compare(next.get().unit(), found.get().unit()) < 0)) {
                    found = next;
                }
            }
        }
        return found.map(next -> next.queue().remove(next.place()));
    }

    /** A piece and where it waits. */
    private record Waiting(List<Unit> queue, int place) {
        Unit unit() {
            return queue.get(place);
        }
    }

    /** The first that needs no trial before it, as long as it overtakes none that ships earlier. */
    private Optional<Waiting> nextOf(List<Unit> queue) {
        for (int place = 0; place < queue.size(); place++) {
            Unit unit = queue.get(place);
            if (Urgency.shipBy(unit).isAfter(Urgency.shipBy(queue.get(0)))) {
                return Optional.empty();
            }
            String blank = Firsts.blank(unit);
            if (!toTry.contains(blank) || tried.containsKey(blank)) {
                return Optional.of(new Waiting(queue, place));
            }
        }
        return Optional.empty();
    }
}
