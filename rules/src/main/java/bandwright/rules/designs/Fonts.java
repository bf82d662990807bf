package bandwright.rules.designs;

import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Once;
import bandwright.rules.table.Quoted;
import bandwright.rules.table.Row;
import bandwright.rules.table.RulesFolder;
import bandwright.rules.table.Table;
import bandwright.rules.units.ShopUnits;
import java.util.List;

/** Reads fonts.csv; the files must lie beside it. */
public final class Fonts {
    private Fonts() {}

    public static List<FontFile> read(Table table, ShopUnits units, RulesFolder folder, Faults faults) {
        Once ids = new Once();
        return table.read(units, faults, row -> font(row, ids, table.isOwn(), folder));
    }

    private static FontFile font(Row row, Once ids, boolean isOwn, RulesFolder folder) {
        String id = row.cell("id").needed().text();
        ids.take(row, "id", id);
        if (FontFile.BUNDLED.contains(Names.fold(id))) {
            row.cell("id").fault("font.bundled");
        }
        String file = row.cell("file").needed().text();
        if (!file.isEmpty() && !folder.holds(isOwn, file)) {
            row.fault("file", "file.missing", Quoted.text(file));
        }
        return new FontFile(id, file, folder.find(isOwn, file), row.text("note"));
    }
}
