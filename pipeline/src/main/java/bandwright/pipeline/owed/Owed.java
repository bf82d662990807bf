package bandwright.pipeline.owed;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import java.util.List;

/**
 * What is to be made and what is not: every piece of every line ends in exactly one of the lists.
 *
 * @param held all held rows so far, those of earlier stages too, but for those that were mended since
 * @param skipped all skipped rows so far
 * @param stops what was printed and is not wanted any more
 */
public record Owed(List<OwedLine> lines, List<HeldRow> held, List<SkippedRow> skipped, List<Stop> stops) {
    public Owed {
        lines = List.copyOf(lines);
        held = List.copyOf(held);
        skipped = List.copyOf(skipped);
        stops = List.copyOf(stops);
    }
}
