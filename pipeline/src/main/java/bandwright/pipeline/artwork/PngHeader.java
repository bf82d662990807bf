package bandwright.pipeline.artwork;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * What a PNG says about itself beside its pixels (ISO/IEC 15948).
 *
 * @param bits a sample
 * @param data the IDAT chunks' contents: together one zlib stream
 * @param palette PLTE, for palette pictures
 * @param transparency tRNS
 * @param tag how its colours are meant
 */
public record PngHeader(
        int width,
        int height,
        int bits,
        PngColour colour,
        boolean interlaced,
        Orientation orientation,
        List<Span> data,
        Optional<Span> palette,
        Optional<Span> transparency,
        PngColourTag tag) {
    public PngHeader {
        data = List.copyOf(data);
    }

    /** Reads the chunks and checks the critical ones, but doesn't unpack the pixels. */
    public static PngHeader read(PictureBytes bytes) throws IOException {
        return new PngChunks(bytes).header();
    }

    public int bitsPerPixel() {
        return bits * colour.channels();
    }

    /** Bytes of a row without its filter byte. */
    public int rowBytes() {
        return rowBytes(width);
    }

    /** Bytes of a row of that many pixels, without its filter byte. */
    public int rowBytes(int pixels) {
        return Math.toIntExact(((long) pixels * bitsPerPixel() + 7) / 8);
    }

    /** About what the pixels unpack to. */
    long unpackedBytes() {
        return (1 + (long) width * bitsPerPixel() / 8) * height;
    }

    /** Whether so few bytes can't be all pixels: a deflated one stands for 1032 at most, a copy of 258 in two bits. */
    boolean isTooShort() {
        return data.stream().mapToLong(Span::length).sum() * 1040 < unpackedBytes();
    }
}
