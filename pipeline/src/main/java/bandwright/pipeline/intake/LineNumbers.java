package bandwright.pipeline.intake;

import java.util.HashMap;
import java.util.Map;

/** Counts the rows of each order of one file, over all its sheets: a line without a number of its own goes by it. */
final class LineNumbers {
    private record Key(String site, String order) {}

    private final Map<Key, Integer> rows = new HashMap<>();

    int next(String site, String order) {
        return rows.merge(new Key(site, order), 1, Integer::sum);
    }
}
