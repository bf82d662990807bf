package bandwright.rules.heat;

import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Once;
import bandwright.rules.table.Plausible;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.Length;
import bandwright.rules.units.ShopUnits;
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

    /** Reads heat-sources.csv. */
    public static HeatSources read(Table table, ShopUnits units, Faults faults) {
        Once ids = new Once();
        return new HeatSources(table.read(units, faults, row -> source(row, ids)));
    }

    private static HeatSource source(Row row, Once ids) {
        String id = row.cell("id").needed().text();
        ids.take(row, "id", id);
        Optional<Length> narrowest = row.cell("min_diameter").length(Plausible.LEAST_DIAMETER);
        Optional<Length> widest = row.cell("max_diameter").length(Plausible.DIAMETER);
        if (narrowest.isPresent() && widest.isPresent() && narrowest.get().longerThan(widest.get())) {
            row.fault("max_diameter", "diameters.crossed", row.text("min_diameter"), row.text("max_diameter"));
        }
        return new HeatSource(
                id,
                row.text("name").isEmpty() ? id : row.text("name"),
                row.cell("kind").needed().word(HeatKind.values()).orElse(HeatKind.OVEN),
                row.cell("machines").integer(1, 1000).orElse(1),
                row.cell("handle_clearance").length(Plausible.MARGIN).orElse(Length.ZERO),
                narrowest,
                widest,
                row.cell("max_taper").limit("", 0, 90),
                row.cell("max_band_height").length(Plausible.SIZE),
                row.cell("max_band_width").length(Plausible.SIZE),
                row.cell("pieces_per_load").integer(1, 10_000).orElse(1),
                row.cell("positions").integer(1, 100).orElse(1),
                row.cell("turn").seconds(),
                row.cell("covering").word(Covering.values()).orElse(Covering.NONE),
                row.cell("watts").integer("w", 0, 100_000).orElse(0),
                row.text("circuit"),
                row.cell("warm_up").seconds(),
                new HeatRates(
                        row.cell("heating_rate").rate().orElse(HeatRates.BUILT_IN.heating()),
                        row.cell("cooling_rate").rate().orElse(HeatRates.BUILT_IN.cooling())),
                row.cell("loading").seconds(),
                row.cell("unloading").seconds(),
                row.text("note"));
    }
}
