package bandwright.pipeline.intake;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.rows.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The piles that rows are laid on while the inbox is read. */
final class Piles {
    private final List<InboxFile> files = new ArrayList<>();
    private final List<OrderLine> lines = new ArrayList<>();
    private final List<HeldRow> held = new ArrayList<>();
    private final List<SkippedRow> skipped = new ArrayList<>();
    private final List<Row> empty = new ArrayList<>();

    /** What a row that says something turned out to be; a set of a mug and a booklet is a line and skipped in part. */
    record Read(Optional<OrderLine> line, Optional<HeldRow> held, Optional<SkippedRow> skipped) {
        static Read held(HeldRow row) {
            return new Read(Optional.empty(), Optional.of(row), Optional.empty());
        }

        static Read skipped(SkippedRow row) {
            return new Read(Optional.empty(), Optional.empty(), Optional.of(row));
        }
    }

    void file(InboxFile file) {
        files.add(file);
    }

    void empty(Row row) {
        empty.add(row);
    }

    void read(Read read) {
        read.line().ifPresent(lines::add);
        read.held().ifPresent(held::add);
        read.skipped().ifPresent(skipped::add);
    }

    Orders orders() {
        return new Orders(files, lines, held, skipped, empty);
    }
}
