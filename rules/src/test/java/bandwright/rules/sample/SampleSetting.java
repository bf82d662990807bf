package bandwright.rules.sample;

import bandwright.rules.blanks.Material;
import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.heat.UsualRange;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Temperature;
import java.util.List;
import java.util.Optional;

/** A row of press-settings.csv for a test. */
public final class SampleSetting {
    private SampleSetting() {}

    /** 190 C for three minutes, by a general figure. */
    public static PressSetting yes(Material material, HeatKind kind) {
        return row(Optional.of(material), kind, "", Allowed.YES, Evidence.COMMON_PRACTICE);
    }

    public static PressSetting of(Material material, HeatKind kind, Allowed allowed) {
        return row(Optional.of(material), kind, "", allowed, Evidence.COMMON_PRACTICE);
    }

    public static PressSetting ofSku(String sku, HeatKind kind, Allowed allowed, Evidence evidence) {
        return row(Optional.empty(), kind, sku, allowed, evidence);
    }

    /** A row that allows the piece but forgot how hot and how long. */
    public static PressSetting withoutFigures(Material material, HeatKind kind) {
        return new PressSetting(
                Optional.of(material),
                kind,
                "",
                Optional.empty(),
                0,
                UsualRange.NOT_SAID,
                "",
                Allowed.YES,
                false,
                "",
                "",
                List.of(),
                Evidence.FROM_MEMORY,
                "");
    }

    /** A row for one blank with figures of its own and what they stand for. */
    public static PressSetting figures(Temperature usual, int seconds, UsualRange range, Evidence evidence) {
        return new PressSetting(
                Optional.empty(),
                HeatKind.MUG_PRESS,
                "KEEPER-11",
                Optional.of(usual),
                seconds,
                range,
                "medium",
                Allowed.YES,
                true,
                "hot",
                "",
                List.of(),
                evidence,
                "");
    }

    private static PressSetting row(
            Optional<Material> material, HeatKind kind, String sku, Allowed allowed, Evidence evidence) {
        boolean isYes = allowed == Allowed.YES;
        return new PressSetting(
                material,
                kind,
                sku,
                isYes ? Optional.of(Temperature.celsius(190)) : Optional.empty(),
                isYes ? 180 : 0,
                UsualRange.NOT_SAID,
                "medium",
                allowed,
                false,
                "",
                "",
                List.of(),
                evidence,
                "");
    }
}
