package bandwright.pipeline.size;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.rules.units.Box;
import bandwright.rules.units.Rgb;

/** One thing that is printed on a transfer, in the upright box of the picture as seen on the blank. */
public sealed interface Layer {
    /** A flat colour. */
    record Fill(Box box, Rgb colour) implements Layer {}

    /**
     * A picture.
     *
     * @param place where the whole picture would lie, cropped parts too
     * @param clip what is printed of it
     */
    record Picture(ArtworkFile artwork, Box place, Box clip) implements Layer {}
}
