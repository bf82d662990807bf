package bandwright.rules.designs;

import bandwright.rules.table.Cell;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.ShopUnits;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** Reads designs.csv. Whether the artwork is there is no question of the rulebook. */
    public static Designs read(Table table, ShopUnits units, Faults faults) {
        return new Designs(table.read(units, faults, Designs::design));
    }

    private static Design design(Row row) {
        Cell second = row.cell("artwork_2");
        Placement placement = row.cell("placement").word(Placement.values()).orElse(Placement.ALL_ROUND);
        if (!second.isEmpty() && placement != Placement.TWO_SIDED && row.areSound("placement")) {
            second.fault("artwork-2");
        }
        double[] centre = centre(row.cell("crop_centre"));
        return new Design(
                row.cell("design").needed().text(),
                row.cell("artwork").needed().text(),
                Optional.of(second.text()).filter(name -> !name.isEmpty()),
                placement,
                row.cell("fit").word(Fit.values()).orElse(Fit.COVER),
                centre[0],
                centre[1],
                row.cell("background").colour(),
                row.text("note"));
    }

    /** Two percentages, {@code 50% 40%}: from the artwork's left and upper edge. Empty = its middle. */
    private static double[] centre(Cell cell) {
        if (cell.isEmpty()) {
            return new double[] {50, 50};
        }
        String[] parts = cell.text().replaceAll("\\s+%", "%").split("[\\s,]+", -1);
        if (parts.length != 2) {
            cell.fault("crop-centre");
            return new double[] {50, 50};
        }
        return new double[] {
            cell.with(parts[0]).percent(0, 100).orElse(50.0),
            cell.with(parts[1]).percent(0, 100).orElse(50.0)
        };
    }
}
