package bandwright.rules.stock;

import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Once;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.ShopUnits;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** stock.csv. A blank without a row is not counted. */
public record Stock(List<StockCount> list) {
    public Stock {
        list = List.copyOf(list);
    }

    public Optional<StockCount> find(String sku) {
        return list.stream().filter(count -> Names.same(count.sku(), sku)).findFirst();
    }

    /** Reads stock.csv. */
    public static Stock read(Table table, ShopUnits units, Faults faults) {
        Once skus = new Once();
        return new Stock(table.read(units, faults, row -> count(row, skus)));
    }

    private static StockCount count(Row row, Once skus) {
        String sku = row.cell("sku").needed().text();
        skus.take(row, "sku", sku);
        return new StockCount(
                sku,
                row.cell("counted_on").needed().date().orElse(LocalDate.EPOCH),
                row.cell("count").needed().integer(0, 10_000_000).orElse(0),
                row.cell("reorder_at").limit(0, 10_000_000),
                row.cell("pack_size").integer(1, 1_000_000).orElse(1),
                row.text("note"));
    }
}
