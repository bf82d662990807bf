package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.JpegHeader;
import bandwright.pipeline.artwork.PictureBytes;
import java.io.IOException;
import java.nio.ByteBuffer;
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
                    colour(header, bytes),
                    new PreparedPicture.Plane(
                            PictureData.whole(artwork.path()),
                            8,
                            new PreparedPicture.Packing.Jpeg(header.components() == 1 || header.transformed())),
                    List.of(),
                    Optional.empty());
        }
    }

    /** What a JPEG's numbers mean. */
    static PictureColour colour(JpegHeader header, PictureBytes bytes) throws IOException {
        Optional<ByteBuffer> profile = IccProfile.find(header.profile(bytes), header.components());
        PictureColour plain = header.components() == 1 ? new PictureColour.Grey() : new PictureColour.Srgb();
        return profile.<PictureColour>map(p -> new PictureColour.Profiled(p, header.components()))
                .orElse(plain);
    }
}
