package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.JpegHeader;
import bandwright.pipeline.artwork.PictureBytes;
import bandwright.pipeline.artwork.PngHeader;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;

/** What the numbers of a picture mean as colour, as its file says. */
public final class PictureColours {
    private PictureColours() {}

    public static PictureColour of(ArtworkFile artwork) throws IOException {
        try (PictureBytes bytes = PictureBytes.open(artwork.path())) {
            return switch (artwork.kind()) {
                case JPEG -> of(JpegHeader.read(bytes), bytes);
                case PNG -> of(PngHeader.read(bytes), bytes);
                case TIFF, WEBP, GIF, SVG, PDF -> new PictureColour.Srgb();
            };
        }
    }

    public static PictureColour of(JpegHeader header, PictureBytes bytes) throws IOException {
        Optional<ByteBuffer> profile = IccProfile.find(header.profile(bytes), header.components());
        PictureColour plain = header.components() == 1 ? new PictureColour.Grey() : new PictureColour.Srgb();
        return profile.<PictureColour>map(p -> new PictureColour.Profiled(p, header.components()))
                .orElse(plain);
    }

    public static PictureColour of(PngHeader header, PictureBytes bytes) throws IOException {
        return PngColours.of(header, bytes);
    }
}
