package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.JpegHeader;
import bandwright.pipeline.artwork.PictureBytes;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.util.Optional;

/** The inks of a JPEG of four components: cyan, magenta, yellow and black, 255 the most ink. */
final class InkedJpeg {
    private InkedJpeg() {}

    /** Every so-manieth pixel; empty for the other kinds of JPEG. */
    static Optional<Raster> find(ArtworkFile artwork, int step) throws IOException {
        JpegHeader header;
        try (PictureBytes bytes = PictureBytes.open(artwork.path())) {
            header = JpegHeader.read(bytes);
        }
        if (header.components() != 4) {
            return Optional.empty();
        }
        Raster raw = Decoding.raster(artwork, step);
        WritableRaster inks = raw.createCompatibleWritableRaster();
        int[] row = new int[4 * raw.getWidth()];
        for (int y = 0; y < raw.getHeight(); y++) {
            raw.getPixels(raw.getMinX(), raw.getMinY() + y, raw.getWidth(), 1, row);
            for (int i = 0; i < row.length; i += 4) {
                if (header.transformed()) {
                    toInks(row, i);
                }
                for (int c = 0; header.inverted() && c < 4; c++) {
                    row[i + c] = 255 - row[i + c];
                }
            }
            inks.setPixels(0, y, raw.getWidth(), 1, row);
        }
        return Optional.of(inks);
    }

    /** ITU-T T.871, section 7, gives red, green and blue; in YCCK these are what the inks leave (ITU-T T.872, 6.5.3). */
    private static void toInks(int[] row, int at) {
        double luma = row[at];
        double blue = row[at + 1] - 128;
        double red = row[at + 2] - 128;
        row[at] = 255 - clipped(luma + 1.402 * red);
        row[at + 1] = 255 - clipped(luma - 0.344136 * blue - 0.714136 * red);
        row[at + 2] = 255 - clipped(luma + 1.772 * blue);
    }

    private static int clipped(double value) {
        return (int) Math.max(0, Math.min(255, Math.round(value)));
    }
}
