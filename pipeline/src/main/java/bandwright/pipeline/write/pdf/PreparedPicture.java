package bandwright.pipeline.write.pdf;

import bandwright.pipeline.pixels.PictureColour;
import bandwright.pipeline.pixels.PictureData;
import java.util.List;
import java.util.Optional;

/**
 * A picture ready for any number of documents: what its PDF dictionary says, and where its packed bytes lie.
 *
 * @param number its own in the run
 * @param colourKey lowest and highest value of each component that is not painted; empty = all are painted
 */
record PreparedPicture(
        int number,
        int width,
        int height,
        PictureColour colour,
        Plane plane,
        List<Integer> colourKey,
        Optional<Plane> mask) {
    PreparedPicture {
        colourKey = List.copyOf(colourKey);
    }

    /**
     * One stream of samples.
     *
     * @param bits a sample
     */
    record Plane(PictureData data, int bits, Packing packing) {}

    /** How samples are packed: the filters of ISO 32000-1, 7.4. */
    sealed interface Packing {
        /**
         * JPEG.
         *
         * @param transformed luma and chroma, as readers suppose
         * @param inverted samples say how little there is: of inks, as some programs store them
         */
        record Jpeg(boolean transformed, boolean inverted) implements Packing {}

        /** Deflated rows, each with a PNG filter byte. */
        record PngRows(int components) implements Packing {}

        /** Deflated rows. */
        record Rows() implements Packing {}
    }
}
