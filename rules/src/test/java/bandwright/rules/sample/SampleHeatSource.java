package bandwright.rules.sample;

import bandwright.rules.heat.Covering;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatRates;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.units.Length;
import java.util.Optional;
import java.util.OptionalDouble;

/** A heat source for a test: one machine without limits, but for what the test says. */
public final class SampleHeatSource {
    private final HeatKind kind;
    private String id;
    private Length clearance = Length.ZERO;
    private Optional<Length> minDiameter = Optional.empty();
    private Optional<Length> maxDiameter = Optional.empty();
    private OptionalDouble maxTaper = OptionalDouble.empty();
    private Optional<Length> maxBandHeight = Optional.empty();
    private Optional<Length> maxBandWidth = Optional.empty();

    private SampleHeatSource(HeatKind kind) {
        this.kind = kind;
        this.id = kind.word();
    }

    public static SampleHeatSource of(HeatKind kind) {
        return new SampleHeatSource(kind);
    }

    public SampleHeatSource id(String name) {
        id = name;
        return this;
    }

    public SampleHeatSource clearance(Length atHandle) {
        clearance = atHandle;
        return this;
    }

    public SampleHeatSource diameters(Length least, Length most) {
        minDiameter = Optional.of(least);
        maxDiameter = Optional.of(most);
        return this;
    }

    public SampleHeatSource maxTaper(double degrees) {
        maxTaper = OptionalDouble.of(degrees);
        return this;
    }

    public SampleHeatSource maxBandHeight(Length most) {
        maxBandHeight = Optional.of(most);
        return this;
    }

    public SampleHeatSource maxBandWidth(Length most) {
        maxBandWidth = Optional.of(most);
        return this;
    }

    public HeatSource source() {
        return new HeatSource(
                id,
                "a sample",
                kind,
                1,
                clearance,
                minDiameter,
                maxDiameter,
                maxTaper,
                maxBandHeight,
                maxBandWidth,
                1,
                1,
                0,
                Covering.NONE,
                0,
                "",
                0,
                HeatRates.BUILT_IN,
                0,
                0,
                "");
    }
}
