package bandwright.pipeline.rows;

import bandwright.rules.orders.OrderField;
import java.util.List;
import java.util.Optional;

/** One row of an order sheet under its header: what intake turns into an order line. */
public record Row(From from, Header header, List<Cell> cells) {
    public Row {
        cells = List.copyOf(cells);
    }

    /** The cell of that field; an empty one where the sheet has no such column. */
    public Cell cell(OrderField field) {
        return header.find(field).filter(i -> i < cells.size()).map(cells::get).orElse(Cell.EMPTY);
    }

    public Optional<String> headerOf(OrderField field) {
        return header.find(field).map(header.texts()::get);
    }

    public boolean isEmpty() {
        return cells.stream().allMatch(Cell::isBlank);
    }
}
