package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.JpegHeader;
import bandwright.pipeline.artwork.PictureBytes;
import bandwright.pipeline.pixels.PictureColours;
import bandwright.pipeline.pixels.PictureData;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** A JPEG goes into a document as it is: PDF's DCTDecode reads the file's own bytes (ISO 32000-1, 7.4.8). */
final class JpegPicture {
    private JpegPicture() {}

    static PreparedPicture of(ArtworkFile artwork, int number) throws IOException {
        try (PictureBytes bytes = PictureBytes.open(artwork.path())) {
            JpegHeader header = JpegHeader.read(bytes);
            return new PreparedPicture(
                    number,
                    header.width(),
                    header.height(),
                    PictureColours.of(header, bytes),
                    new PreparedPicture.Plane(
                            PictureData.whole(artwork.path()),
                            8,
                            new PreparedPicture.Packing.Jpeg(isAsSupposed(header), header.inverted())),
                    List.of(),
                    Optional.empty());
        }
    }

    /** Readers suppose that three components are transformed; that four are, only where an Adobe segment says so. */
    private static boolean isAsSupposed(JpegHeader header) {
        return header.components() != 3 || header.transformed();
    }
}
