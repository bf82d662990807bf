package bandwright.rules.heat;

import bandwright.rules.blanks.Blank;
import bandwright.rules.table.Names;
import java.util.List;
import java.util.Optional;

/**
 * press-settings.csv. The most specific row wins whole: sku + kind, then material + kind. No row means not allowed;
 * {@code if listed} on a material means only where a sku row says yes.
 */
public record PressSettings(List<PressSetting> list) {
    public PressSettings {
        list = List.copyOf(list);
    }

    /** The row that counts for that blank in that kind of heat source, whatever it allows. */
    public Optional<PressSetting> find(Blank blank, HeatKind kind) {
        return ofSku(blank, kind).or(() -> ofMaterial(blank, kind));
    }

    /** All rows that speak about that blank in that kind of heat source: their cautions and gloves add up. */
    public List<PressSetting> about(Blank blank, HeatKind kind) {
        return list.stream()
                .filter(row -> row.kind() == kind)
                .filter(row -> isSku(row, blank) || isMaterial(row, blank))
                .toList();
    }

    private Optional<PressSetting> ofSku(Blank blank, HeatKind kind) {
        return list.stream()
                .filter(row -> row.kind() == kind && isSku(row, blank))
                .findFirst();
    }

    private Optional<PressSetting> ofMaterial(Blank blank, HeatKind kind) {
        return list.stream()
                .filter(row -> row.kind() == kind && isMaterial(row, blank))
                .findFirst();
    }

    private static boolean isSku(PressSetting row, Blank blank) {
        return !row.sku().isEmpty() && Names.same(row.sku(), blank.sku());
    }

    private static boolean isMaterial(PressSetting row, Blank blank) {
        return row.sku().isEmpty()
                && row.material().filter(blank.material()::equals).isPresent();
    }
}
