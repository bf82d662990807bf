package bandwright.pipeline.intake;

import bandwright.pipeline.intake.format.GridRow;
import bandwright.pipeline.intake.format.Merge;
import bandwright.pipeline.rows.Cell;
import bandwright.pipeline.rows.Header;
import bandwright.rules.orders.OrderField;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Gives the value of merged cells to each of their rows: an order number merged down over three rows belongs to all
 * three. Not a quantity, as two mugs over two rows may be two or four: there a person must say. A row that has nothing
 * of its own stays empty.
 */
final class MergedCells {
    private final Optional<Integer> quantity;
    private final Map<Integer, List<Merge>> startingIn = new HashMap<>();

    MergedCells(List<Merge> merges, Header header) {
        quantity = header.find(OrderField.QUANTITY);
        merges.forEach(merge -> startingIn
                .computeIfAbsent(merge.firstRow(), row -> new ArrayList<>())
                .add(merge));
    }

    List<GridRow> filled(List<GridRow> rows) {
        if (startingIn.isEmpty()) {
            return rows;
        }
        Map<Integer, Map<Integer, Cell>> above = new HashMap<>();
        List<GridRow> filled = new ArrayList<>();
        for (GridRow row : rows) {
            Map<Integer, Cell> given = above.remove(row.number());
            startingIn.getOrDefault(row.number(), List.of()).forEach(merge -> give(row, merge, above));
            filled.add(given == null || row.isBlank() ? row : with(row, given));
        }
        return filled;
    }

    private void give(GridRow row, Merge merge, Map<Integer, Map<Integer, Cell>> above) {
        boolean hasValue = merge.column() < row.cells().size()
                && !row.cells().get(merge.column()).isBlank();
        if (hasValue && !quantity.equals(Optional.of(merge.column()))) {
            Cell cell = row.cells().get(merge.column());
            for (int below = row.number() + 1; below <= merge.lastRow(); below++) {
                above.computeIfAbsent(below, each -> new HashMap<>()).put(merge.column(), cell);
            }
        }
    }

    private static GridRow with(GridRow row, Map<Integer, Cell> given) {
        List<Cell> cells = new ArrayList<>(row.cells());
        given.forEach((column, cell) -> {
            while (cells.size() <= column) {
                cells.add(Cell.EMPTY);
            }
            if (cells.get(column).isBlank()) {
                cells.set(column, cell);
            }
        });
        return new GridRow(row.number(), cells, row.isHidden());
    }
}
