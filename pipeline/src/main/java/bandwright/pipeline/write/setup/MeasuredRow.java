package bandwright.pipeline.write.setup;

import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.heat.UsualRange;
import bandwright.rules.table.Evidence;
import bandwright.rules.table.TableFile;
import bandwright.rules.units.Temperature;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The row that a shop adds to press-settings.csv once it has found a setting, in the order of that file's columns, with
 * TEMPERATURE and TIME where its own figures belong. What a listing allows stays in the row, so that no later trial
 * leaves it either.
 */
public record MeasuredRow(TableFile file, Map<String, String> cells) {
    /** Stands where the figures belong; not to be translated, as nothing that a table could take for one. */
    public static final String TEMPERATURE = "TEMPERATURE";

    public static final String TIME = "TIME";

    private static final double HAIR = 1e-6;

    public MeasuredRow {
        cells = Map.copyOf(cells);
    }

    /** From the row that counted so far. */
    public static MeasuredRow of(PressSetting setting, String sku, TableFile file) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("heat_kind", setting.kind().word());
        cells.put("sku", sku);
        cells.put("temperature", TEMPERATURE);
        cells.put("time", TIME);
        if (!setting.sku().isEmpty()) {
            UsualRange range = setting.range();
            range.leastTemperature().ifPresent(heat -> cells.put("least_temperature", degrees(heat)));
            range.mostTemperature().ifPresent(heat -> cells.put("most_temperature", degrees(heat)));
            range.leastSeconds().ifPresent(time -> cells.put("least_time", time + " s"));
            range.mostSeconds().ifPresent(time -> cells.put("most_time", time + " s"));
        }
        cells.put("pressure", setting.pressure());
        cells.put("allowed", Allowed.YES.word());
        cells.put("gloves", setting.gloves() ? "yes" : "no");
        cells.put("peel", setting.peel());
        cells.put("rest", setting.rest());
        cells.put("cautions", String.join("|", setting.cautions()));
        cells.put("evidence", Evidence.MEASURED.word());
        return new MeasuredRow(file, cells);
    }

    /** In the scale in which it is a whole number. */
    private static String degrees(Temperature heat) {
        boolean isWholeF = Math.abs(heat.fahrenheit() - heat.wholeFahrenheit()) < HAIR;
        boolean isWholeC = Math.abs(heat.celsius() - heat.wholeCelsius()) < HAIR;
        if (isWholeF && !isWholeC) {
            return heat.wholeFahrenheit() + " F";
        }
        return BigDecimal.valueOf(heat.celsius())
                        .setScale(3, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros()
                        .toPlainString()
                + " C";
    }

    /** As it is typed into the file. */
    public String line() {
        return file.row(cells);
    }

    /** Columns that the file has to get first. */
    public List<String> missing() {
        return file.missing(cells).stream().sorted().toList();
    }
}
