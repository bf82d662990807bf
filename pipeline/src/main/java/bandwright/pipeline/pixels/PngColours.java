package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.PictureBytes;
import bandwright.pipeline.artwork.PngColour;
import bandwright.pipeline.artwork.PngColourTag;
import bandwright.pipeline.artwork.PngHeader;
import bandwright.pipeline.artwork.Span;
import bandwright.pipeline.limits.Limits;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Optional;
import java.util.zip.InflaterInputStream;

/**
 * What the chunks of a PNG say about its colours, in PDF's terms: a profile wins, then sRGB, then gamma and primaries
 * (the order of PNG, third edition, 4.3); a PNG that says nothing is sRGB.
 */
final class PngColours {
    private PngColours() {}

    static PictureColour of(PngHeader header, PictureBytes bytes) throws IOException {
        PictureColour base = base(header, bytes);
        if (header.colour() != PngColour.PALETTE) {
            return base;
        }
        Span palette = header.palette().orElseThrow();
        long most = Math.min(palette.length(), 3L << header.bits());
        return new PictureColour.Palette(base, ByteBuffer.wrap(bytes.bytes(new Span(palette.at(), most))));
    }

    private static PictureColour base(PngHeader header, PictureBytes bytes) throws IOException {
        boolean grey = header.colour().isGrey();
        PngColourTag tag = header.tag();
        Optional<ByteBuffer> profile = profile(tag, bytes, grey ? 1 : 3);
        if (profile.isPresent()) {
            return new PictureColour.Profiled(profile.get(), grey ? 1 : 3);
        }
        double gamma = tag.gamma().isEmpty() ? 2.2 : 100_000.0 / tag.gamma().getAsInt();
        if (grey) {
            return tag.hasSrgbCurve()
                    ? new PictureColour.Grey()
                    : new PictureColour.CalibratedGrey(gamma, Primaries.white(tag.chromaOrSrgb()));
        }
        if (tag.hasSrgbCurve() && tag.hasSrgbPrimaries()) {
            return new PictureColour.Srgb();
        }
        return Primaries.toXyz(tag.chromaOrSrgb())
                .<PictureColour>map(
                        matrix -> new PictureColour.CalibratedRgb(gamma, Primaries.white(tag.chromaOrSrgb()), matrix))
                .orElse(new PictureColour.Srgb());
    }

    /** iCCP: a name of up to 79 letters, a zero, the method (0), the profile deflated (ISO/IEC 15948, 11.3.3.3). */
    private static Optional<ByteBuffer> profile(PngColourTag tag, PictureBytes bytes, int components)
            throws IOException {
        if (tag.profile().isEmpty() || tag.profile().get().length() > Limits.PROFILE_BYTES) {
            return Optional.empty();
        }
        byte[] chunk = bytes.bytes(tag.profile().get());
        int name = 0;
        while (name < chunk.length && chunk[name] != 0) {
            name++;
        }
        if (name + 2 >= chunk.length || chunk[name + 1] != 0) {
            return Optional.empty();
        }
        try (var in = new InflaterInputStream(new ByteArrayInputStream(chunk, name + 2, chunk.length - name - 2))) {
            return IccProfile.find(in.readNBytes(Limits.PROFILE_BYTES), components);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** From chromaticities to XYZ. */
    static final class Primaries {
        private Primaries() {}

        /** The white's XYZ at Y = 1. */
        static List<Double> white(List<Integer> chroma) {
            return xyz(chroma, 0);
        }

        private static List<Double> xyz(List<Integer> chroma, int at) {
            double x = chroma.get(at);
            double y = chroma.get(at + 1);
            return List.of(x / y, 1.0, (100_000 - x - y) / y);
        }

        /** XYZ of red, green and blue, one after the other, so that together they are the white; empty if they can't be. */
        static Optional<List<Double>> toXyz(List<Integer> chroma) {
            List<Double> w = white(chroma);
            List<Double> r = xyz(chroma, 2);
            List<Double> g = xyz(chroma, 4);
            List<Double> b = xyz(chroma, 6);
            double all = determinant(r, g, b);
            if (Math.abs(all) < 1e-6) {
                return Optional.empty();
            }
            // Cramer's rule for r, g, b with sr R + sg G + sb B = W.
            double sr = determinant(w, g, b) / all;
            double sg = determinant(r, w, b) / all;
            double sb = determinant(r, g, w) / all;
            if (sr <= 0 || sg <= 0 || sb <= 0) {
                return Optional.empty();
            }
            return Optional.of(List.of(
                    sr * r.get(0),
                    sr,
                    sr * r.get(2),
                    sg * g.get(0),
                    sg,
                    sg * g.get(2),
                    sb * b.get(0),
                    sb,
                    sb * b.get(2)));
        }

        private static double determinant(List<Double> a, List<Double> b, List<Double> c) {
            return a.get(0) * (b.get(1) * c.get(2) - c.get(1) * b.get(2))
                    - b.get(0) * (a.get(1) * c.get(2) - c.get(1) * a.get(2))
                    + c.get(0) * (a.get(1) * b.get(2) - b.get(1) * a.get(2));
        }
    }
}
