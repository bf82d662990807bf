package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.PictureBytes;
import bandwright.pipeline.artwork.PngColour;
import bandwright.pipeline.artwork.PngHeader;
import bandwright.pipeline.artwork.Span;
import bandwright.pipeline.pixels.PackedRows;
import bandwright.pipeline.pixels.PictureColour;
import bandwright.pipeline.pixels.PictureColours;
import bandwright.pipeline.pixels.PictureData;
import bandwright.pipeline.write.pdf.PreparedPicture.Packing;
import bandwright.pipeline.write.pdf.PreparedPicture.Plane;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A PNG for a document. PDF reads PNG's own packed rows (ISO 32000-1, 7.4.4.4), so they go in as they are, except that
 * alpha is parted from colour, and an interlaced picture is laid together, as PDF knows neither.
 */
final class PngPicture {
    private final PngHeader header;
    private final PictureBytes bytes;
    private final PictureData packed;
    private final int number;
    private final Path scratch;

    private PngPicture(PngHeader header, PictureBytes bytes, Path file, int number, Path scratch) {
        this.header = header;
        this.bytes = bytes;
        this.packed = new PictureData(file, header.data());
        this.number = number;
        this.scratch = scratch;
    }

    /** @param scratch a folder for what is packed anew */
    static PreparedPicture of(ArtworkFile artwork, int number, Path scratch) throws IOException {
        try (PictureBytes bytes = PictureBytes.open(artwork.path())) {
            return new PngPicture(PngHeader.read(bytes), bytes, artwork.path(), number, scratch).prepared();
        }
    }

    private PreparedPicture prepared() throws IOException {
        PictureColour colour = PictureColours.of(header, bytes);
        Optional<byte[]> said = transparency();
        boolean byKey = said.isPresent() && header.colour() != PngColour.PALETTE && header.bits() < 16;
        if (header.colour().hasAlpha()) {
            return split(colour);
        }
        Plane plane = new Plane(header.interlaced() ? relaid() : packed, header.bits(), rows(components()));
        // Readers compare 16-bit colours with a key after rounding them to 8 bits: these get a mask instead.
        Optional<Plane> mask = said.isPresent() && !byKey ? mask(new Opacity(header, said.get())) : Optional.empty();
        List<Integer> key = byKey ? key(said.get()) : List.of();
        return new PreparedPicture(number, header.width(), header.height(), colour, plane, key, mask);
    }

    private int components() {
        return header.colour().channels() - (header.colour().hasAlpha() ? 1 : 0);
    }

    private static Packing rows(int components) {
        return new Packing.PngRows(components);
    }

    /** What tRNS says, if it says anything that changes the picture. */
    private Optional<byte[]> transparency() throws IOException {
        if (header.transparency().isEmpty() || header.colour().hasAlpha()) {
            return Optional.empty();
        }
        Span chunk = header.transparency().get();
        if (header.colour() != PngColour.PALETTE) {
            return chunk.length() == 2L * components() ? Optional.of(bytes.bytes(chunk)) : Optional.empty();
        }
        byte[] said = bytes.bytes(new Span(chunk.at(), Math.min(256, chunk.length())));
        for (byte alpha : said) {
            if (alpha != -1) {
                return Optional.of(said);
            }
        }
        return Optional.empty();
    }

    private List<Integer> key(byte[] said) {
        List<Integer> key = new ArrayList<>();
        for (int i = 0; i < said.length; i += 2) {
            int sample = (((said[i] & 0xFF) << 8) | (said[i + 1] & 0xFF)) & ((1 << header.bits()) - 1);
            key.add(sample);
            key.add(sample);
        }
        return key;
    }

    private PreparedPicture split(PictureColour colour) throws IOException {
        try (PackedRows rows = PackedRows.open(header, packed.file());
                Repacked colours = Repacked.ofColour(scratch.resolve(number + ".colour"));
                Repacked alphas = Repacked.ofAlpha(scratch.resolve(number + ".alpha"))) {
            boolean opaque = new AlphaSplit(header, colours, alphas).splitAll(rows);
            Plane plane = new Plane(colours.finished(), header.bits(), rows(components()));
            Plane mask = new Plane(alphas.finished(), header.bits(), rows(1));
            return new PreparedPicture(
                    number,
                    header.width(),
                    header.height(),
                    colour,
                    plane,
                    List.of(),
                    opaque ? Optional.empty() : Optional.of(mask));
        }
    }

    private PictureData relaid() throws IOException {
        try (PackedRows rows = PackedRows.open(header, packed.file());
                Repacked out = Repacked.ofColour(scratch.resolve(number + ".rows"))) {
            byte[] row = new byte[1 + header.rowBytes()];
            for (int y = 0; y < header.height(); y++) {
                rows.next(row);
                out.write(row);
            }
            return out.finished();
        }
    }

    private Optional<Plane> mask(Opacity opacity) throws IOException {
        try (PackedRows rows = PackedRows.open(header, packed.file());
                Repacked out = Repacked.ofMask(scratch.resolve(number + ".mask"))) {
            opacity.writeMask(rows, out);
            return Optional.of(new Plane(out.finished(), opacity.maskBits(), new Packing.Rows()));
        }
    }
}
