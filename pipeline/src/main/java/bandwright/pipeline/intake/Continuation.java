package bandwright.pipeline.intake;

import bandwright.pipeline.rows.Cell;
import bandwright.pipeline.rows.Row;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Joins rows to the order above them, for sites that write the order's own cells on its first row only: number, dates,
 * buyer and address. A row whose order-level cells are all empty has those of the row above, from then on as if the site
 * had written them, so that it can be held, mended and dropped again on its own.
 */
final class Continuation {
    private final Site site;
    private Optional<Row> above = Optional.empty();

    Continuation(Site site) {
        this.site = site;
    }

    /** The row as it is, or with the order's cells; to be asked for every row of a sheet from the top. */
    Row joined(Row row) {
        if (!site.continued()) {
            return row;
        }
        boolean isContinued =
                above.isPresent() && OrderField.OF_THE_ORDER.stream().allMatch(field -> isNothing(row, field));
        Row whole = isContinued ? with(row, above.get()) : row;
        above = Optional.of(whole);
        return whole;
    }

    private boolean isNothing(Row row, OrderField field) {
        return RowValues.text(row, site, field).isEmpty();
    }

    private static Row with(Row row, Row above) {
        List<Cell> cells = new ArrayList<>(row.cells());
        for (OrderField field : OrderField.OF_THE_ORDER) {
            row.header().find(field).ifPresent(column -> {
                while (cells.size() <= column) {
                    cells.add(Cell.EMPTY);
                }
                cells.set(column, above.cell(field));
            });
        }
        return new Row(row.from(), row.header(), cells);
    }
}
