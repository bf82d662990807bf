package bandwright.rules.designs;

import bandwright.rules.table.Names;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** designs.csv. Several rows of one name are variants: the one nearest in aspect ratio to the band is taken. */
public final class Designs {
    private final Map<String, List<Design>> byName;

    public Designs(List<Design> all) {
        byName = all.stream()
                .collect(Collectors.groupingBy(
                        design -> Names.fold(design.name()), LinkedHashMap::new, Collectors.toUnmodifiableList()));
    }

    /** All rows of that design; empty where there is no such design. */
    public List<Design> variants(String name) {
        return byName.getOrDefault(Names.fold(name), List.of());
    }

    /** One name for each design, as written, in the order of the table. */
    public List<String> names() {
        return byName.values().stream().map(rows -> rows.get(0).name()).toList();
    }
}
