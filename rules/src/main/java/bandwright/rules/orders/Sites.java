package bandwright.rules.orders;

import bandwright.rules.table.Cell;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Once;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.ShopUnits;
import java.util.List;

/** sites.csv, in the order of the table. */
public record Sites(List<Site> list) {
    public Sites {
        list = List.copyOf(list);
    }

    /** Reads sites.csv. */
    public static Sites read(Table table, ShopUnits units, Faults faults) {
        Once names = new Once();
        return new Sites(table.read(units, faults, row -> site(row, names)));
    }

    private static Site site(Row row, Once names) {
        String name = row.text("site");
        // The row without a name is one of its kind, too.
        names.take(row, "site", "site " + name);
        return new Site(
                name,
                row.text("files"),
                row.cell("header_row").limit(1, 1_048_576),
                row.cell("date_order").word(DateOrder.values()),
                decimal(row.cell("decimal")),
                row.cell("continued").yes(),
                row.cell("skip_status").list(),
                row.text("text_separator"),
                row.cell("empty_words").list(),
                row.cell("approval").yes(),
                row.text("note"));
    }

    private static char decimal(Cell cell) {
        return cell.oneOf(List.of(".", ","), sign -> sign).orElse(".").charAt(0);
    }
}
