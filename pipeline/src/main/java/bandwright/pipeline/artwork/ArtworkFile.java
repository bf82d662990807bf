package bandwright.pipeline.artwork;

import java.nio.file.Path;

/**
 * A picture of the artwork folder as its header tells it; its pixels are touched when a sheet is written.
 *
 * @param name as designs and rows write it: a path inside the artwork folder, with slashes
 * @param path where it lies
 * @param bytes the file's size
 * @param pixelWidth as stored, before the orientation tag is obeyed; of vector artwork thousandths of a point
 * @param pixelHeight as stored
 */
public record ArtworkFile(
        String name, Path path, long bytes, Kind kind, int pixelWidth, int pixelHeight, Orientation orientation) {

    /** The kinds that are told by content. */
    public enum Kind {
        JPEG,
        PNG,
        TIFF,
        WEBP,
        GIF,
        SVG,
        PDF;

        /** Whether it is drawn from shapes and can be printed at any size. */
        public boolean isVector() {
            return this == SVG || this == PDF;
        }
    }

    /** Pixels across the picture as a person sees it. */
    public int shownWidth() {
        return orientation.swapsSides() ? pixelHeight : pixelWidth;
    }

    /** Pixels up the picture as a person sees it. */
    public int shownHeight() {
        return orientation.swapsSides() ? pixelWidth : pixelHeight;
    }
}
