package bandwright.rules.orders;

import java.util.List;

/** sites.csv, in the order of the table. */
public record Sites(List<Site> list) {
    public Sites {
        list = List.copyOf(list);
    }
}
