package bandwright.rules.paper;

import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Once;
import bandwright.rules.table.Quoted;
import bandwright.rules.table.Row;
import bandwright.rules.table.RulesFolder;
import bandwright.rules.table.Table;
import bandwright.rules.units.ShopUnits;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** printers.csv, in the order of the table. */
public record Printers(List<Printer> list) {
    public Printers {
        list = List.copyOf(list);
    }

    public Optional<Printer> find(String id) {
        return list.stream().filter(printer -> Names.same(printer.id(), id)).findFirst();
    }

    /** Reads printers.csv; colour profiles must lie beside it. */
    public static Printers read(Table table, ShopUnits units, RulesFolder folder, Faults faults) {
        Once ids = new Once();
        return new Printers(table.read(units, faults, row -> printer(row, ids, table.isOwn(), folder)));
    }

    private static Printer printer(Row row, Once ids, boolean isOwn, RulesFolder folder) {
        String id = row.cell("id").needed().text();
        ids.take(row, "id", id);
        ColourBy colour = row.cell("colour").word(ColourBy.values()).orElse(ColourBy.DRIVER);
        String profile = row.text("icc_profile");
        if (colour == ColourBy.PROFILE && profile.isEmpty()) {
            row.fault("icc_profile", "profile.needed");
        }
        if (!profile.isEmpty() && !folder.holds(isOwn, profile)) {
            row.fault("icc_profile", "file.missing", Quoted.text(profile));
        }
        return new Printer(
                id,
                row.cell("papers").needed().list(),
                queue(row),
                row.cell("mirror").needed().word(MirrorBy.values()).orElse(MirrorBy.FILE),
                colour == ColourBy.PROFILE ? profile(row, folder.find(isOwn, profile)) : Optional.empty(),
                row.cell("ink_cost").cost(),
                scale(row, "scale_x"),
                scale(row, "scale_y"),
                row.text("note"));
    }

    /** A name as systems allow it for a queue; one with a hyphen in front would be read as an option. */
    private static Optional<String> queue(Row row) {
        String queue = row.text("queue");
        if (queue.startsWith("-") || queue.codePoints().anyMatch(c -> Character.isISOControl(c) || c == ' ')) {
            row.fault("queue", "queue", Quoted.text(queue));
        }
        return queue.isEmpty() ? Optional.empty() : Optional.of(queue);
    }

    private static Optional<PrinterProfile> profile(Row row, Optional<Path> file) {
        Intent intent = row.cell("intent").word(Intent.values()).orElse(Intent.RELATIVE_COLORIMETRIC);
        try {
            return file.isPresent() ? Optional.of(PrinterProfile.read(file.get(), intent)) : Optional.empty();
        } catch (PrinterProfile.Unusable e) {
            row.fault("icc_profile", e.fault(), Quoted.text(row.text("icc_profile")));
            return Optional.empty();
        }
    }

    /** Measured / nominal; a printer that is off by more than a tenth needs a repair, not a figure here. */
    private static double scale(Row row, String column) {
        return row.cell(column).number("", 0.9, 1.1).orElse(1.0);
    }
}
