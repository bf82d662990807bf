package bandwright.pipeline;

import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.stock.StockCount;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;

/** Since when a blank's count goes down with what is taken. */
final class Counted {
    private Counted() {}

    /** By the sku as blanks.csv writes it. */
    static Map<String, LocalDate> on(Rulebook rules) {
        Map<String, LocalDate> counted = new TreeMap<>();
        for (StockCount count : rules.stock().list()) {
            String sku = rules.blanks().find(count.sku()).map(Blank::sku).orElse(count.sku());
            counted.put(sku, count.countedOn());
        }
        return counted;
    }
}
