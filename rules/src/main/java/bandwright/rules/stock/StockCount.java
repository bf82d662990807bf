package bandwright.rules.stock;

import java.time.LocalDate;
import java.util.OptionalInt;

/** How many of a blank were on the shelf when somebody last counted: a row of stock.csv. */
public record StockCount(String sku, LocalDate countedOn, int count, OptionalInt reorderAt, int packSize, String note) {
    /** The same after some were taken off the shelf. */
    public StockCount less(int taken) {
        return new StockCount(sku, countedOn, Math.max(0, count - taken), reorderAt, packSize, note);
    }
}
