package bandwright.rules.heat;

import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which heat source presses a blank: the first of those asked that is allowed, fits, and has a setting; and why each one
 * before it does not. A glass stein, asked of a mug press and an oven: the press refuses (NOT_ALLOWED), the oven takes it.
 */
public record HeatChoice(Optional<Chosen> chosen, List<Refusal> refusals) {
    /** How far a wall may lean in a press whose row names no limit. [J] */
    static final double DEFAULT_MAX_TAPER = 0.6;

    public HeatChoice {
        refusals = List.copyOf(refusals);
    }

    /** The heat source, and how it is set for that blank. */
    public record Chosen(HeatSource source, PressSetting setting) {}

    /** Why one heat source does not take the blank. */
    public record Refusal(HeatSource source, Why why) {}

    /** What speaks against a heat source. */
    public enum Why {
        FLAT_NOT_HERE,
        ROUND_NOT_HERE,
        NO_SETTING,
        NOT_ALLOWED,
        NOT_LISTED,
        TOO_NARROW,
        TOO_WIDE,
        LEANS_TOO_MUCH
    }

    /** The blank's own list in its order, else every heat source in the order of the table. */
    public static List<HeatSource> candidates(Blank blank, HeatSources sources) {
        if (blank.heatSources().isEmpty()) {
            return sources.list();
        }
        return blank.heatSources().stream()
                .flatMap(id -> sources.find(id).stream())
                .toList();
    }

    public static HeatChoice among(List<HeatSource> sources, Blank blank, PressSettings settings) {
        List<Refusal> refusals = new ArrayList<>();
        for (HeatSource source : sources) {
            Optional<PressSetting> setting = settings.find(blank, source.kind());
            Optional<Why> why = refusal(source, blank, setting);
            if (why.isEmpty()) {
                return new HeatChoice(Optional.of(new Chosen(source, setting.orElseThrow())), refusals);
            }
            refusals.add(new Refusal(source, why.get()));
        }
        return new HeatChoice(Optional.empty(), refusals);
    }

    private static Optional<Why> refusal(HeatSource source, Blank blank, Optional<PressSetting> setting) {
        boolean isFlat = blank.form().isFlat();
        if (isFlat && !source.kind().takesFlat()) {
            return Optional.of(Why.FLAT_NOT_HERE);
        }
        if (!isFlat && !source.kind().takesRound()) {
            return Optional.of(Why.ROUND_NOT_HERE);
        }
        if (setting.isEmpty()) {
            return Optional.of(Why.NO_SETTING);
        }
        Allowed allowed = setting.get().allowed();
        if (allowed != Allowed.YES) {
            return Optional.of(allowed == Allowed.NO ? Why.NOT_ALLOWED : Why.NOT_LISTED);
        }
        if (setting.get().temperature().isEmpty() || setting.get().timeSeconds() <= 0) {
            return Optional.of(Why.NO_SETTING);
        }
        return doesNotFit(source, blank);
    }

    private static Optional<Why> doesNotFit(HeatSource source, Blank blank) {
        Optional<BandLaw.Diameters> diameters = BandLaw.diameters(blank, source);
        if (diameters.isEmpty()) {
            return Optional.empty();
        }
        Length narrowest = diameters.get().narrowest();
        Length widest = diameters.get().widest();
        if (source.minDiameter().filter(least -> least.longerThan(narrowest)).isPresent()) {
            return Optional.of(Why.TOO_NARROW);
        }
        if (source.maxDiameter().filter(widest::longerThan).isPresent()) {
            return Optional.of(Why.TOO_WIDE);
        }
        return BandLaw.taperDegrees(blank) > mostTaper(source) ? Optional.of(Why.LEANS_TOO_MUCH) : Optional.empty();
    }

    /** How far a wall may lean in it, in degrees a side. */
    public static double mostTaper(HeatSource source) {
        return source.maxTaper().orElse(source.kind().limitsTaper() ? DEFAULT_MAX_TAPER : Double.POSITIVE_INFINITY);
    }
}
