package bandwright.pipeline.match;

import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatSource;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which of a design's pictures suits what is printed on a band, its bleeds too: the one nearest in aspect ratio, twice as wide being as far off as half as
 * wide. On a band of 2.2 : 1 a picture of 2 : 1 is taken rather than one of 1 : 1 or 3 : 1.
 */
final class Variants {
    private Variants() {}

    /** Ties go to the upper row of the table; with nothing to print on, the first is as good as any. */
    static Picked nearest(List<Picked> variants, Blank blank, HeatSource source) {
        Optional<Band> band = BandLaw.of(blank, source);
        if (band.isEmpty()) {
            return variants.get(0);
        }
        double wanted =
                Math.log(band.get().around().mm() / band.get().printHeight().mm());
        return variants.stream()
                .min(Comparator.comparingDouble(variant -> Math.abs(ratio(variant) - wanted)))
                .orElseThrow();
    }

    private static double ratio(Picked variant) {
        return Math.log(
                (double) variant.artwork().shownWidth() / variant.artwork().shownHeight());
    }
}
