package bandwright.rules.heat;

import bandwright.rules.table.Names;
import java.util.List;
import java.util.Optional;

/** heat-sources.csv, in the order of the table. */
public record HeatSources(List<HeatSource> list) {
    public HeatSources {
        list = List.copyOf(list);
    }

    public Optional<HeatSource> find(String id) {
        return list.stream().filter(source -> Names.same(source.id(), id)).findFirst();
    }
}
