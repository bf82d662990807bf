package bandwright.rules.orders;

import java.util.List;

/** order-columns.csv: the headers that each field goes by, and those that every shop has. */
public record OrderColumns(List<OrderColumn> list) {
    public OrderColumns {
        list = List.copyOf(list);
    }
}
