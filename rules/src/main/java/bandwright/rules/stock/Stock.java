package bandwright.rules.stock;

import bandwright.rules.table.Names;
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
}
