package bandwright.pipeline.write.workbook;

import bandwright.pipeline.RowFate;
import bandwright.pipeline.write.workbook.OrdersWorkbook.Column;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * orders.xlsx read back: what the sums need of it.
 *
 * @param units the cells of unit ids as the file keeps them
 */
public record OrdersBack(List<String> outcomes, int pieces, List<String> units) {
    public OrdersBack {
        outcomes = List.copyOf(outcomes);
        units = List.copyOf(units);
    }

    public static OrdersBack read(Path folder) throws IOException {
        List<WorkbookBack.Row> rows =
                WorkbookBack.read(folder.resolve(OrdersWorkbook.FILE)).sheets().get(0);
        List<WorkbookBack.Row> data = rows.subList(1, rows.size());
        return new OrdersBack(
                data.stream().map(row -> cell(row, Column.OUTCOME)).toList(),
                data.stream()
                        .mapToInt(row -> Integer.parseInt(cell(row, Column.PIECES)))
                        .sum(),
                data.stream().map(row -> cell(row, Column.UNITS)).toList());
    }

    /** How the file keeps the ids of one row: joined, and cut where a cell holds no more. */
    public static String unitsCell(RowFate fate) {
        return CellText.of(OrdersRow.units(fate));
    }

    private static String cell(WorkbookBack.Row row, Column column) {
        return row.cell(column.number());
    }
}
