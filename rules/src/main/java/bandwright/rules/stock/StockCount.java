package bandwright.rules.stock;

import java.time.LocalDate;
import java.util.OptionalInt;

/** How many of a blank were on the shelf when somebody last counted: a row of stock.csv. */
public record StockCount(
        String sku, LocalDate countedOn, int count, OptionalInt reorderAt, int packSize, String note) {}
