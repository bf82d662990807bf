package bandwright.pipeline.intake;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.rows.Row;
import java.util.ArrayList;
import java.util.List;

/** The piles that rows are laid on while the inbox is read. */
final class Piles {
    private final List<InboxFile> files = new ArrayList<>();
    private final List<OrderLine> lines = new ArrayList<>();
    private final List<HeldRow> held = new ArrayList<>();
    private final List<SkippedRow> skipped = new ArrayList<>();
    private final List<Row> empty = new ArrayList<>();

    /** What a row that says something turned out to be. */
    sealed interface Read {
        record Line(OrderLine line) implements Read {}

        record Held(HeldRow row) implements Read {}

        record Skipped(SkippedRow row) implements Read {}
    }

    void file(InboxFile file) {
        files.add(file);
    }

    void empty(Row row) {
        empty.add(row);
    }

    void read(Read read) {
        if (read instanceof Read.Line line) {
            lines.add(line.line());
        } else if (read instanceof Read.Held row) {
            held.add(row.row());
        } else if (read instanceof Read.Skipped row) {
            skipped.add(row.row());
        }
    }

    Orders orders() {
        return new Orders(files, lines, held, skipped, empty);
    }
}
