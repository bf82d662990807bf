package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.pixels.PictureColours;
import bandwright.pipeline.pixels.Unpacked;
import bandwright.pipeline.write.pdf.PreparedPicture.Packing;
import bandwright.pipeline.write.pdf.PreparedPicture.Plane;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A TIFF, WebP or GIF for a document: its samples as they are, packed as PDF can read them, once for the run. A palette
 * stays one; alpha becomes a mask.
 */
final class UnpackedPicture {
    private final Unpacked picture;
    private final int number;
    private final Path scratch;

    private UnpackedPicture(Unpacked picture, int number, Path scratch) {
        this.picture = picture;
        this.number = number;
        this.scratch = scratch;
    }

    /** @param scratch a folder for what is packed */
    static PreparedPicture of(ArtworkFile artwork, int number, Path scratch) throws IOException {
        UnpackedPicture packing = new UnpackedPicture(Unpacked.read(artwork), number, scratch);
        return packing.prepared(artwork);
    }

    private PreparedPicture prepared(ArtworkFile artwork) throws IOException {
        try (Repacked colours = Repacked.ofColour(scratch.resolve(number + ".colour"));
                Repacked alphas = Repacked.ofAlpha(scratch.resolve(number + ".alpha"))) {
            boolean isOpaque = pack(colours, alphas);
            Plane plane = plane(colours, picture.colours());
            Plane mask = plane(alphas, 1);
            return new PreparedPicture(
                    number,
                    picture.width(),
                    picture.height(),
                    PictureColours.of(artwork),
                    plane,
                    picture.transparent().stream()
                            .flatMap(key -> IntStream.of(key, key))
                            .boxed()
                            .toList(),
                    isOpaque ? Optional.empty() : Optional.of(mask));
        }
    }

    private Plane plane(Repacked packed, int components) throws IOException {
        return new Plane(packed.finished(), picture.bits(), new Packing.PngRows(components));
    }

    /** Writes all rows; true = every pixel is opaque. */
    private boolean pack(Repacked colours, Repacked alphas) throws IOException {
        SampleRows colourRows = new SampleRows(colours, picture.width(), picture.colours(), picture.bits());
        SampleRows alphaRows = new SampleRows(alphas, picture.width(), 1, picture.bits());
        int most = (1 << picture.bits()) - 1;
        boolean isOpaque = true;
        int[] row = picture.newRow();
        for (int y = 0; y < picture.height(); y++) {
            picture.row(y, row);
            colourRows.write(row, 0, picture.samples());
            if (picture.hasAlpha()) {
                alphaRows.write(row, picture.colours(), picture.samples());
                isOpaque = isOpaque && isOpaque(row, most);
            }
        }
        return isOpaque;
    }

    private boolean isOpaque(int[] row, int most) {
        int samples = picture.samples();
        for (int i = samples - 1; i < picture.width() * samples; i += samples) {
            if (row[i] != most) {
                return false;
            }
        }
        return true;
    }
}
