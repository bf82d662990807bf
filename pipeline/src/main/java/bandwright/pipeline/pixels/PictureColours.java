package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.GifHeader;
import bandwright.pipeline.artwork.JpegHeader;
import bandwright.pipeline.artwork.PictureBytes;
import bandwright.pipeline.artwork.PngHeader;
import bandwright.pipeline.artwork.Span;
import bandwright.pipeline.artwork.TiffHeader;
import bandwright.pipeline.artwork.WebpHeader;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;

/** What the numbers of a picture mean as colour, as its file says. */
public final class PictureColours {
    private PictureColours() {}

    public static PictureColour of(ArtworkFile artwork) throws IOException {
        try (PictureBytes bytes = PictureBytes.open(artwork.path())) {
            return switch (artwork.kind()) {
                case JPEG -> of(JpegHeader.read(bytes), bytes);
                case PNG -> of(PngHeader.read(bytes), bytes);
                case TIFF -> of(TiffHeader.read(bytes), bytes);
                case WEBP -> of(WebpHeader.read(bytes), bytes);
                case GIF -> of(GifHeader.read(bytes), bytes);
                case SVG, PDF -> new PictureColour.Srgb();
            };
        }
    }

    public static PictureColour of(JpegHeader header, PictureBytes bytes) throws IOException {
        Optional<ByteBuffer> profile = IccProfile.find(header.profile(bytes), header.components());
        return of(profile, header.components());
    }

    public static PictureColour of(TiffHeader header, PictureBytes bytes) throws IOException {
        int colours = header.palette().isPresent() ? 3 : header.colour().colours();
        PictureColour base = of(profile(header.profile(), bytes, colours), colours);
        return header.palette()
                .<PictureColour>map(palette -> new PictureColour.Palette(base, palette))
                .orElse(base);
    }

    public static PictureColour of(WebpHeader header, PictureBytes bytes) throws IOException {
        return of(profile(header.profile(), bytes, 3), 3);
    }

    /** A palette that is shorter than its codes could ask for goes on in black. */
    public static PictureColour of(GifHeader header, PictureBytes bytes) throws IOException {
        byte[] said = bytes.bytes(header.palette());
        int colours = Math.max(said.length / 3, 1 << (header.codeBits() - 1));
        return new PictureColour.Palette(
                new PictureColour.Srgb(), ByteBuffer.wrap(Arrays.copyOf(said, 3 * Math.min(256, colours))));
    }

    private static Optional<ByteBuffer> profile(Optional<Span> span, PictureBytes bytes, int components)
            throws IOException {
        return span.isEmpty() ? Optional.empty() : IccProfile.find(bytes.bytes(span.get()), components);
    }

    private static PictureColour of(Optional<ByteBuffer> profile, int components) {
        PictureColour plain = components == 1
                ? new PictureColour.Grey()
                : components == 4 ? new PictureColour.Cmyk() : new PictureColour.Srgb();
        return profile.<PictureColour>map(own -> new PictureColour.Profiled(own, components))
                .orElse(plain);
    }

    public static PictureColour of(PngHeader header, PictureBytes bytes) throws IOException {
        return PngColours.of(header, bytes);
    }
}
