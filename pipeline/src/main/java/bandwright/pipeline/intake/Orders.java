package bandwright.pipeline.intake;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import java.util.List;

/** The whole inbox, read: every row of it stands in exactly one of these lists. */
public record Orders(
        List<InboxFile> files, List<OrderLine> lines, List<HeldRow> held, List<SkippedRow> skipped, List<Row> empty) {
    public Orders {
        files = List.copyOf(files);
        lines = List.copyOf(lines);
        held = List.copyOf(held);
        skipped = List.copyOf(skipped);
        empty = List.copyOf(empty);
    }
}
