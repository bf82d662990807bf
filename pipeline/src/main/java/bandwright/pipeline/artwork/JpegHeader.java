package bandwright.pipeline.artwork;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * What a JPEG says about itself before its pixels (ITU-T T.81 Annex B).
 *
 * @param components 1 grey, 3 colour, 4 CMYK
 * @param transformed whether three components are luma and chroma, as nearly always, or red, green and blue; and
 *     whether four are luma, chroma and black (YCCK)
 * @param inverted whether the four components say how little ink there is: an Adobe segment means that, by common
 *     practice of the programs that write it
 * @param profile the parts of an ICC profile, in their order (ICC.1 Annex B.4); empty without
 */
public record JpegHeader(
        int width,
        int height,
        int components,
        boolean transformed,
        boolean inverted,
        Orientation orientation,
        List<Span> profile) {
    public JpegHeader {
        profile = List.copyOf(profile);
    }

    /** Reads the header and finds the end of the picture, but doesn't decode. */
    public static JpegHeader read(PictureBytes bytes) throws IOException {
        return new JpegSegments(bytes).header();
    }

    /** The ICC profile's bytes; empty without one. */
    public byte[] profile(PictureBytes bytes) throws IOException {
        List<byte[]> parts = new ArrayList<>();
        int length = 0;
        for (Span part : profile) {
            parts.add(bytes.bytes(part));
            length += (int) part.length();
        }
        byte[] all = new byte[length];
        int at = 0;
        for (byte[] part : parts) {
            System.arraycopy(part, 0, all, at, part.length);
            at += part.length;
        }
        return all;
    }
}
