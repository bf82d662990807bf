package bandwright.pipeline;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.rows.Row;
import bandwright.pipeline.size.Unit;
import java.util.List;
import java.util.Optional;

/**
 * What became of one row: of three mugs two are made and one is held for its picture.
 *
 * @param line empty where the row never was understood as an order line
 */
public record RowFate(
        Row row, Optional<OrderLine> line, List<Unit> units, List<HeldRow> held, List<SkippedRow> skipped) {
    public RowFate {
        units = List.copyOf(units);
        held = List.copyOf(held);
        skipped = List.copyOf(skipped);
    }

    public RowEnd end() {
        if (!units.isEmpty()) {
            return held.isEmpty() && skipped.isEmpty() ? RowEnd.MADE : RowEnd.PART;
        }
        if (!held.isEmpty()) {
            return RowEnd.HELD;
        }
        return skipped.isEmpty() ? RowEnd.EMPTY : RowEnd.SKIPPED;
    }

    public int heldPieces() {
        return held.stream().mapToInt(HeldRow::pieces).sum();
    }

    public int skippedPieces() {
        return skipped.stream().mapToInt(SkippedRow::pieces).sum();
    }

    /** Pieces ordered; of a row that was never understood, those that its hold speaks of. */
    public int ordered() {
        return line.map(OrderLine::ordered).orElseGet(() -> heldPieces() + skippedPieces());
    }

    /** The order's number; empty where the row has none. */
    public String order() {
        return line.map(OrderLine::order)
                .or(() -> held.stream().map(HeldRow::order).findFirst())
                .or(() -> skipped.stream().map(SkippedRow::order).findFirst())
                .orElse("");
    }
}
