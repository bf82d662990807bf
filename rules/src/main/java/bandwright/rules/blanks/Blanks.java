package bandwright.rules.blanks;

import bandwright.rules.table.Names;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** blanks.csv: every kind of blank that the shop decorates, found by its sku or an alias. */
public final class Blanks {
    private final List<Blank> all;
    private final Map<String, Blank> byName = new LinkedHashMap<>();

    public Blanks(List<Blank> all) {
        this.all = List.copyOf(all);
        for (Blank blank : this.all) {
            byName.put(Names.fold(blank.sku()), blank);
        }
        for (Blank blank : this.all) {
            blank.aliases().forEach(alias -> byName.putIfAbsent(Names.fold(alias), blank));
        }
    }

    public List<Blank> list() {
        return all;
    }

    public Optional<Blank> find(String skuOrAlias) {
        return Optional.ofNullable(byName.get(Names.fold(skuOrAlias)));
    }
}
