package bandwright.rules.heat;

import bandwright.rules.table.Faults;
import bandwright.rules.table.Once;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.ShopUnits;
import java.util.List;

/** Reads circuits.csv. */
public final class Circuits {
    private Circuits() {}

    public static List<Circuit> read(Table table, ShopUnits units, Faults faults) {
        Once ids = new Once();
        return table.read(units, faults, row -> circuit(row, ids));
    }

    private static Circuit circuit(Row row, Once ids) {
        String id = row.cell("id").needed().text();
        ids.take(row, "id", id);
        return new Circuit(
                id,
                row.cell("volts").needed().number("v", 1, 1000).orElse(0.0),
                row.cell("amperes").needed().number("a", 0.1, 1000).orElse(0.0),
                row.text("note"));
    }
}
