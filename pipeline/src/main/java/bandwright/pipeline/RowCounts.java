package bandwright.pipeline;

import bandwright.pipeline.intake.InboxFile;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** How many rows were read, by the files' own count, and how they ended: read = made + part + held + skipped + empty. */
public record RowCounts(int read, int made, int part, int held, int skipped, int empty) {
    public static RowCounts of(Run run) {
        return of(run, RowFates.of(run));
    }

    static RowCounts of(Run run, List<RowFate> fates) {
        Map<RowEnd, Integer> ends = new EnumMap<>(RowEnd.class);
        fates.forEach(fate -> ends.merge(fate.end(), 1, Integer::sum));
        return new RowCounts(
                run.orders().files().stream().mapToInt(InboxFile::rows).sum(),
                ends.getOrDefault(RowEnd.MADE, 0),
                ends.getOrDefault(RowEnd.PART, 0),
                ends.getOrDefault(RowEnd.HELD, 0),
                ends.getOrDefault(RowEnd.SKIPPED, 0),
                ends.getOrDefault(RowEnd.EMPTY, 0));
    }

    public int of(RowEnd end) {
        return switch (end) {
            case MADE -> made;
            case PART -> part;
            case HELD -> held;
            case SKIPPED -> skipped;
            case EMPTY -> empty;
        };
    }
}
