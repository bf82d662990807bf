package bandwright.pipeline.artwork;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;

/**
 * What a TIFF says about its first picture (TIFF 6.0).
 *
 * @param bits a sample, alpha included
 * @param samples a pixel, alpha and what nobody knows included
 * @param palette three bytes a colour; empty for the other kinds
 * @param profile an ICC profile
 * @param plain the picture's own directory and nothing else, for a reader that would follow every one
 */
public record TiffHeader(
        int width,
        int height,
        int bits,
        TiffColour colour,
        int samples,
        Alpha alpha,
        Orientation orientation,
        Optional<ByteBuffer> palette,
        Optional<Span> profile,
        TiffBytes plain) {
    /** Whether the sample after the colours is alpha, and whether the colours are multiplied by it. */
    public enum Alpha {
        NONE,
        PLAIN,
        MULTIPLIED
    }

    /** Reads the first directory and checks that all its samples lie in the file; unpacks nothing. */
    public static TiffHeader read(PictureBytes bytes) throws IOException {
        return new TiffFields(TiffDirectory.read(bytes)).header();
    }

    /** What all its samples unpack to. */
    long unpackedBytes() {
        long bytes = bits > 8 ? 2 : 1;
        return (long) width * height * samples * bytes;
    }
}
