package bandwright.rules.orders;

import bandwright.rules.table.Cell;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Quoted;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.ShopUnits;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads products.csv. Rows with equal keys together are a set, so none is one too many. */
public final class Products {
    private Products() {}

    public static List<Product> read(Table table, ShopUnits units, Faults faults) {
        return table.read(units, faults, Products::product);
    }

    private static Product product(Row row) {
        return new Product(
                row.text("site"),
                row.cell("product").needed().text(),
                pairs(row.cell("variation")),
                row.text("blank"),
                row.text("design"),
                row.cell("count").integer(1, 10_000).orElse(1),
                pairs(row.cell("texts")),
                row.text("note"),
                row.number());
    }

    private static SortedMap<String, String> pairs(Cell cell) {
        SortedMap<String, String> pairs = new TreeMap<>();
        for (Cell.Pair pair : cell.pairs()) {
            boolean isNew = pairs.keySet().stream().noneMatch(key -> Names.same(key, pair.key()));
            if (isNew) {
                pairs.put(pair.key(), pair.value());
            } else {
                cell.fault("pair.twice", Quoted.text(pair.key()));
            }
        }
        return Collections.unmodifiableSortedMap(pairs);
    }
}
