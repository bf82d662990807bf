package bandwright.pipeline.match;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.PlacementLaw;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.units.Box;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which of a design's pictures suits the box that it is placed in, bleeds too: the one nearest in aspect ratio, twice as
 * wide being as far off as half as wide. In a box of 2.2 : 1 a picture of 2 : 1 is taken rather than one of 1 : 1 or 3 : 1.
 */
final class Variants {
    private Variants() {}

    /** Ties go to the upper row of the table; with nothing to print on, the first is as good as any. */
    static Picked nearest(List<Picked> variants, Blank blank, HeatSource source) {
        Optional<Band> band = BandLaw.of(blank, source);
        if (band.isEmpty()) {
            return variants.get(0);
        }
        return variants.stream()
                .min(Comparator.comparingDouble(
                        variant -> Math.abs(ratio(variant) - wanted(variant, band.get(), blank))))
                .orElseThrow();
    }

    /** Of the box that the variant's placement gives its picture. */
    private static double wanted(Picked variant, Band band, Blank blank) {
        Box box = PlacementLaw.boxes(
                        variant.design().placement(), band, blank.form().isFlat())
                .stream()
                .findFirst()
                .orElse(Box.of(band.around(), band.printHeight()));
        return Math.log(box.width().mm() / box.height().mm());
    }

    private static double ratio(Picked variant) {
        ArtworkFile artwork = variant.artworks().get(0);
        return Math.log((double) artwork.shownWidth() / artwork.shownHeight());
    }
}
