package bandwright.pipeline.size;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.type.Outline;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;

/** One thing that is printed on a transfer, in the upright box of the picture as seen on the blank. */
public sealed interface Layer {
    /** What is printed of it. */
    Box shown();

    /** The same further right. */
    Layer shifted(Length right);

    /** The same, of which no more shows than that. */
    Layer clipped(Box box);

    /**
     * Letters.
     *
     * @param ink the box of what is inked
     * @param clip what is printed of it
     */
    record Type(Outline outline, Rgb colour, Box ink, Box clip) implements Layer {
        /** How far the ink would reach beyond what is printed; not positive where all of it is. */
        Length cut() {
            return clip.x()
                    .minus(ink.x())
                    .atLeast(ink.right().minus(clip.right()))
                    .atLeast(clip.y().minus(ink.y()))
                    .atLeast(ink.top().minus(clip.top()));
        }

        @Override
        public Box shown() {
            return clip;
        }

        @Override
        public Layer shifted(Length right) {
            return new Type(
                    outline.shifted(right), colour, ink.shifted(right, Length.ZERO), clip.shifted(right, Length.ZERO));
        }

        @Override
        public Layer clipped(Box to) {
            return new Type(outline, colour, ink, to);
        }
    }

    /** A flat colour. */
    record Fill(Box box, Rgb colour) implements Layer {
        @Override
        public Box shown() {
            return box;
        }

        @Override
        public Layer shifted(Length right) {
            return new Fill(box.shifted(right, Length.ZERO), colour);
        }

        @Override
        public Layer clipped(Box to) {
            return new Fill(to, colour);
        }
    }

    /**
     * A picture.
     *
     * @param place where the whole picture would lie, cropped parts too
     * @param clip what is printed of it
     */
    record Picture(ArtworkFile artwork, Box place, Box clip) implements Layer {
        @Override
        public Box shown() {
            return clip;
        }

        @Override
        public Layer shifted(Length right) {
            return new Picture(artwork, place.shifted(right, Length.ZERO), clip.shifted(right, Length.ZERO));
        }

        @Override
        public Layer clipped(Box to) {
            return new Picture(artwork, place, to);
        }
    }
}
