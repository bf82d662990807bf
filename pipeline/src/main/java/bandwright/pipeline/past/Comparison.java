package bandwright.pipeline.past;

import bandwright.rules.spoilage.FisherExact;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Two settings of one blank in one heat source beside each other: of 60 made with the one 6 were spoiled, of 60 with the
 * other 2, which chance alone does in 27 of 100 cases.
 *
 * @param usual the setting with which most were made
 * @param chance how often chance alone makes two like settings differ by as much
 * @param isCertain whether that is so seldom that the settings do differ
 */
public record Comparison(
        Heating usual, Turnout usualTurnout, Heating other, Turnout otherTurnout, double chance, boolean isCertain) {
    /** Every other setting against the usual one; none where nothing was spoiled with either. */
    public static List<Comparison> of(Experience known, String sku, String source) {
        List<Heating> heatings = new ArrayList<>(known.listHeatings(sku, source));
        if (heatings.size() < 2) {
            return List.of();
        }
        Heating usual = heatings.stream()
                .max(Comparator.<Heating>comparingInt(
                                heating -> known.madeWith(sku, source, heating).pieces())
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
        heatings.remove(usual);
        // Who asks three times finds something by chance three times as often (Bonferroni).
        double certain = FisherExact.CERTAIN / heatings.size();
        Turnout usualTurnout = known.madeWith(sku, source, usual);
        List<Comparison> comparisons = new ArrayList<>();
        for (Heating heating : heatings) {
            Turnout turnout = known.madeWith(sku, source, heating);
            if (usualTurnout.spoiled() + turnout.spoiled() > 0) {
                double chance = FisherExact.chance(
                        usualTurnout.pieces(), usualTurnout.spoiled(), turnout.pieces(), turnout.spoiled());
                comparisons.add(new Comparison(usual, usualTurnout, heating, turnout, chance, chance < certain));
            }
        }
        return List.copyOf(comparisons);
    }
}
