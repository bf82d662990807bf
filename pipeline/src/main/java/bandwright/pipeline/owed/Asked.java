package bandwright.pipeline.owed;

import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.past.Signature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How often an order asks for one thing: as often as the file that asks for most of it.
 *
 * @param file that file
 * @param slots its pieces
 * @param repeated what the other files say of it again
 */
record Asked(String file, List<Slot> slots, List<Slot> repeated) {
    /** By what is asked for, in the order of the rows. */
    static Map<Signature, Asked> of(List<MatchedLine> lines) {
        Map<Signature, Map<String, List<Slot>>> byFile = new LinkedHashMap<>();
        for (MatchedLine line : lines) {
            for (Slot slot : Slot.of(line)) {
                byFile.computeIfAbsent(slot.signature(), any -> new LinkedHashMap<>())
                        .computeIfAbsent(slot.file(), any -> new ArrayList<>())
                        .add(slot);
            }
        }
        Map<Signature, Asked> asked = new LinkedHashMap<>();
        byFile.forEach((signature, files) -> asked.put(signature, most(files)));
        return asked;
    }

    private static Asked most(Map<String, List<Slot>> files) {
        String file = files.keySet().iterator().next();
        for (Map.Entry<String, List<Slot>> other : files.entrySet()) {
            if (other.getValue().size() > files.getOrDefault(file, List.of()).size()) {
                file = other.getKey();
            }
        }
        List<Slot> repeated = new ArrayList<>();
        for (Map.Entry<String, List<Slot>> other : files.entrySet()) {
            if (!other.getKey().equals(file)) {
                repeated.addAll(other.getValue());
            }
        }
        return new Asked(file, List.copyOf(files.getOrDefault(file, List.of())), List.copyOf(repeated));
    }
}
