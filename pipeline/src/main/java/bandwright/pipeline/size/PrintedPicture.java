package bandwright.pipeline.size;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.rules.blanks.Band;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Fit;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * What is printed on a band: a design's picture all round it, its background, and at the right end the overlap, where
 * the first millimetres come again. A tumbler of 230 mm with 2 mm of overlap gets a transfer of 232 mm, the last 2 mm of
 * which show what the first 2 mm show.
 */
record PrintedPicture(Transfer transfer, PictureFit fit) {
    static PrintedPicture of(Band band, Design design, ArtworkFile artwork) {
        Box wrap = Box.of(band.around(), band.printHeight());
        Box printed = Box.of(band.printWidth(), band.printHeight());
        PictureFit fit = PictureFit.of(design, artwork, wrap);
        List<Layer> layers = new ArrayList<>();
        if (design.fit() == Fit.CONTAIN) {
            design.background().ifPresent(colour -> layers.add(new Layer.Fill(printed, colour)));
        }
        Box shown = shared(fit.place(), wrap);
        layers.add(new Layer.Picture(artwork, fit.place(), shown));
        Box again = shared(shown.shifted(band.around(), Length.ZERO), printed);
        if (again.width().isPositive()) {
            layers.add(new Layer.Picture(artwork, fit.place().shifted(band.around(), Length.ZERO), again));
        }
        return new PrintedPicture(new Transfer(printed.width(), printed.height(), layers), fit);
    }

    /** What two boxes have in common; without width or height where they do not meet. */
    private static Box shared(Box one, Box other) {
        Length x = one.x().atLeast(other.x());
        Length y = one.y().atLeast(other.y());
        Length width = one.right().atMost(other.right()).minus(x).atLeast(Length.ZERO);
        Length height = one.top().atMost(other.top()).minus(y).atLeast(Length.ZERO);
        return new Box(x, y, width, height);
    }
}
