package bandwright.pipeline.shop;

import bandwright.rules.blanks.Material;
import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatRates;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.heat.UsualRange;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Length;
import bandwright.rules.units.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A heat source for a test, warm at once and with room for one piece, but for what the test says; and how it is set. */
public final class SampleHeat {
    private final String id;
    private final HeatKind kind;
    private String name;
    private Length clearance = Length.ZERO;
    private Optional<Length> maxBandHeight = Optional.empty();
    private int piecesPerLoad = 1;
    private Covering covering = Covering.NONE;
    private int warmUpSeconds;
    private int loadingSeconds;
    private int unloadingSeconds;

    private SampleHeat(String id, HeatKind kind) {
        this.id = id;
        this.kind = kind;
        this.name = id;
    }

    public static SampleHeat of(String id, HeatKind kind) {
        return new SampleHeat(id, kind);
    }

    public SampleHeat name(String words) {
        name = words;
        return this;
    }

    public SampleHeat clearance(Length atHandle) {
        clearance = atHandle;
        return this;
    }

    public SampleHeat maxBandHeight(Optional<Length> most) {
        maxBandHeight = most;
        return this;
    }

    public SampleHeat piecesPerLoad(int most) {
        piecesPerLoad = most;
        return this;
    }

    public SampleHeat covering(Covering what) {
        covering = what;
        return this;
    }

    public SampleHeat seconds(int warmUp, int loading, int unloading) {
        warmUpSeconds = warmUp;
        loadingSeconds = loading;
        unloadingSeconds = unloading;
        return this;
    }

    public HeatSource source() {
        return new HeatSource(
                id,
                name,
                kind,
                1,
                clearance,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                maxBandHeight,
                Optional.empty(),
                piecesPerLoad,
                1,
                0,
                covering,
                0,
                "",
                warmUpSeconds,
                HeatRates.BUILT_IN,
                loadingSeconds,
                unloadingSeconds,
                "");
    }

    /** A general row, peeled hot and with gloves. */
    public static PressSetting setting(
            Material material, HeatKind kind, Optional<Temperature> temperature, int seconds, Allowed allowed) {
        return new PressSetting(
                Optional.of(material),
                kind,
                "",
                temperature,
                seconds,
                UsualRange.NOT_SAID,
                "medium",
                allowed,
                true,
                "hot",
                "",
                List.of(),
                Evidence.COMMON_PRACTICE,
                "");
    }
}
