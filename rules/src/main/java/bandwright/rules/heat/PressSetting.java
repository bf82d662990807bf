package bandwright.rules.heat;

import bandwright.rules.blanks.Material;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Temperature;
import java.util.List;
import java.util.Optional;

/**
 * How hot, how long, how hard: a row of press-settings.csv. A row with {@code allowed} no or if listed may leave
 * temperature and time empty.
 *
 * @param material empty in a row that names a sku
 * @param sku empty = every blank of the material
 * @param timeSeconds one position's time
 * @param range between which figures those two stand
 * @param gloves whether this row asks for gloves; "no" prints nothing
 * @param cautions codes of cautions.csv
 */
public record PressSetting(
        Optional<Material> material,
        HeatKind kind,
        String sku,
        Optional<Temperature> temperature,
        int timeSeconds,
        UsualRange range,
        String pressure,
        Allowed allowed,
        boolean gloves,
        String peel,
        String rest,
        List<String> cautions,
        Evidence evidence,
        String note) {
    public PressSetting {
        cautions = List.copyOf(cautions);
    }

    /** Whether these figures stand for this very blank: from its supplier's listing or measured in the shop. */
    public boolean isConfirmed() {
        return !sku.isEmpty() && (evidence == Evidence.SUPPLIER_LISTING || evidence == Evidence.MEASURED);
    }
}
