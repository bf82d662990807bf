package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.pixels.StoredPixels;
import bandwright.rules.paper.PrinterProfile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A picture in a printer's own inks, converted by its profile. Every pixel is kept, unless there are so many that a small
 * computer's memory would not hold them: then it is the mean of four, nine ...
 */
final class ConvertedPicture {
    /** More than an A3 sheet has at 450 pixels an inch. */
    private static final long MOST_PIXELS = 40_000_000;

    /** Of vector artwork with gradients and the like, which has no pixels of its own: 13 in at 300 an inch. */
    private static final int DRAWN_SIDE = 4000;

    private ConvertedPicture() {}

    /** @param scratch a folder for what is packed */
    static PreparedPicture of(ArtworkFile artwork, int number, PrinterProfile printer, Path scratch)
            throws IOException {
        StoredPixels pixels = StoredPixels.read(artwork, step(artwork));
        try (PixelRows rows = PixelRows.open(
                scratch.resolve("inks-" + number),
                pixels.width(),
                pixels.isGrey(),
                pixels.hasAlpha(),
                pixels.colour(),
                Optional.of(printer))) {
            int[] row = new int[pixels.width()];
            for (int y = 0; y < pixels.height(); y++) {
                for (int x = 0; x < row.length; x++) {
                    row[x] = pixels.at(y * row.length + x);
                }
                rows.write(row);
            }
            return rows.finished(number, pixels.height());
        }
    }

    private static int step(ArtworkFile artwork) {
        if (artwork.kind().isVector()) {
            return Math.max(1, Math.max(artwork.pixelWidth(), artwork.pixelHeight()) / DRAWN_SIDE);
        }
        long pixels = (long) artwork.pixelWidth() * artwork.pixelHeight();
        return (int) Math.ceil(Math.sqrt((double) pixels / MOST_PIXELS));
    }
}
