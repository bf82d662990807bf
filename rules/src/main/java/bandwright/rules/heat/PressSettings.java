package bandwright.rules.heat;

import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Material;
import bandwright.rules.table.Cell;
import bandwright.rules.table.Evidence;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Once;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.ShopUnits;
import bandwright.rules.units.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * press-settings.csv. The most specific row wins whole: sku + kind, then material + kind. No row means not allowed;
 * {@code if listed} on a material means only where a sku row says yes.
 */
public record PressSettings(List<PressSetting> list) {
    /** The same temperature in the other scale may differ in its last digit. */
    private static final double HAIR = 1e-6;

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

    /** Reads press-settings.csv. */
    public static PressSettings read(Table table, ShopUnits units, Faults faults) {
        Once keys = new Once();
        return new PressSettings(table.read(units, faults, row -> setting(row, keys)));
    }

    private static PressSetting setting(Row row, Once keys) {
        String sku = row.text("sku");
        Cell material = row.cell("material");
        if (sku.isEmpty() && material.isEmpty()) {
            row.fault("material", "setting.of-what");
        }
        HeatKind kind = row.cell("heat_kind").needed().word(HeatKind.values()).orElse(HeatKind.OVEN);
        if (row.areSound("heat_kind")) {
            keys.take(row, sku.isEmpty() ? "material" : "sku", sku.isEmpty() ? material.text() : sku, kind.word());
        }
        Allowed allowed = row.cell("allowed").needed().word(Allowed.values()).orElse(Allowed.NO);
        int seconds = row.cell("time").seconds();
        checkFigures(row, allowed, seconds);
        Optional<Temperature> temperature = row.cell("temperature").temperature();
        return new PressSetting(
                material.word(Material.values()),
                kind,
                sku,
                temperature,
                seconds,
                range(row, temperature, seconds),
                row.text("pressure"),
                allowed,
                row.cell("gloves").yes(),
                row.text("peel"),
                row.text("rest"),
                row.cell("cautions").list(),
                row.cell("evidence").word(Evidence.values()).orElse(Evidence.FROM_MEMORY),
                row.text("note"));
    }

    /** Between which figures the row's own ones stand. */
    private static UsualRange range(Row row, Optional<Temperature> temperature, int seconds) {
        UsualRange range = new UsualRange(
                row.cell("least_temperature").temperature(),
                row.cell("most_temperature").temperature(),
                time(row.cell("least_time")),
                time(row.cell("most_time")));
        if (temperature.isPresent()) {
            double heat = temperature.get().celsius();
            double least = range.leastTemperature().map(Temperature::celsius).orElse(heat);
            double most = range.mostTemperature().map(Temperature::celsius).orElse(heat);
            checkOrder(row, "temperature", least, heat, most);
        }
        if (seconds > 0) {
            int least = range.leastSeconds().orElse(seconds);
            checkOrder(row, "time", least, seconds, range.mostSeconds().orElse(seconds));
        }
        return range;
    }

    private static void checkOrder(Row row, String column, double least, double own, double most) {
        if (least > own + HAIR) {
            row.fault("least_" + column, "setting.above", column, row.text(column));
        }
        if (most < own - HAIR) {
            row.fault("most_" + column, "setting.below", column, row.text(column));
        }
    }

    private static OptionalInt time(Cell cell) {
        int seconds = cell.seconds();
        return seconds > 0 ? OptionalInt.of(seconds) : OptionalInt.empty();
    }

    /** Nobody may be told to press without being told how hot and how long. */
    private static void checkFigures(Row row, Allowed allowed, int seconds) {
        if (allowed != Allowed.YES) {
            return;
        }
        if (row.text("temperature").isEmpty()) {
            row.fault("temperature", "setting.how-hot");
        }
        if (row.areSound("time") && seconds == 0) {
            row.fault("time", "setting.how-long");
        }
    }
}
