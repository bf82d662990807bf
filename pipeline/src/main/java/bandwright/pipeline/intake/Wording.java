package bandwright.pipeline.intake;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a row says that is to be written on its pieces, as the site wrote it.
 *
 * @param personalisation all of it packed into one cell; mostly empty
 * @param columns by field, where each field has a column of its own
 * @param separator stands between texts for several pieces; empty = nothing does
 * @param emptyWords by which the site says that nothing was asked
 */
public record Wording(
        String personalisation, SortedMap<String, String> columns, String separator, List<String> emptyWords) {
    public static final Wording NONE = new Wording("", new TreeMap<>(), "", List.of());

    public Wording {
        columns = Collections.unmodifiableSortedMap(new TreeMap<>(columns));
        emptyWords = List.copyOf(emptyWords);
    }
}
