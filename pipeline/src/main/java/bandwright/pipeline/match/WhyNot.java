package bandwright.pipeline.match;

import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatChoice;
import bandwright.rules.heat.HeatChoice.Why;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** What speaks against a heat source, in words: "glass must not go into a mug press". */
public final class WhyNot {
    private WhyNot() {}

    /** One clause, without a full stop. */
    public static String of(Why why, Blank blank, HeatSource source) {
        String kind = source.kind().word();
        String material = blank.material().word();
        return switch (why) {
            case FLAT_NOT_HERE -> Words.say("match.why.flat-not-here", kind);
            case ROUND_NOT_HERE -> Words.say("match.why.round-not-here", kind);
            case NO_SETTING -> Words.say("match.why.no-setting", blank.sku(), material, kind);
            case NOT_ALLOWED -> Words.say("match.why.not-allowed", blank.sku(), material, kind);
            case NOT_LISTED -> Words.say("match.why.not-listed", blank.sku(), material, kind);
            case TOO_NARROW -> Words.say("match.why.too-narrow", narrowest(blank, source), mm(source.minDiameter()));
            case TOO_WIDE -> Words.say("match.why.too-wide", widest(blank, source), mm(source.maxDiameter()));
            case LEANS_TOO_MUCH ->
                Words.say("match.why.leans", degrees(BandLaw.taperDegrees(blank)), limit(HeatChoice.mostTaper(source)));
        };
    }

    private static String narrowest(Blank blank, HeatSource source) {
        return mm(BandLaw.diameters(blank, source).map(BandLaw.Diameters::narrowest));
    }

    private static String widest(Blank blank, HeatSource source) {
        return mm(BandLaw.diameters(blank, source).map(BandLaw.Diameters::widest));
    }

    private static String mm(Optional<Length> length) {
        return length.map(l -> l.mm2().toPlainString()).orElse("?");
    }

    /** Rounded up, so that what is beyond a limit never reads like the limit itself. */
    private static String degrees(double angle) {
        return BigDecimal.valueOf(angle).setScale(2, RoundingMode.UP).toPlainString();
    }

    private static String limit(double angle) {
        return BigDecimal.valueOf(angle).stripTrailingZeros().toPlainString();
    }
}
