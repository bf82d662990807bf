package bandwright.pipeline.artwork;

import bandwright.pipeline.artwork.TiffHeader.Alpha;
import bandwright.pipeline.limits.Limits;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Makes sense of a TIFF's fields, and refuses what no picture for print needs before anybody unpacks it. */
final class TiffFields {
    /** None, three fax codes, LZW, two numbers of ZIP, PackBits. */
    private static final List<Integer> COMPRESSIONS = List.of(1, 2, 3, 4, 5, 8, 32_946, 32_773);

    private static final List<Integer> FAX = List.of(2, 3, 4);
    private static final int UNCOMPRESSED = 1;
    private static final int SHORTS = 256;

    /** TIFF 6.0, section 18: 1 = multiplied by alpha, 2 = alpha beside plain colours, 0 = nobody knows what. */
    private static final int MULTIPLIED = 1;

    private static final int PLAIN = 2;

    private final TiffDirectory fields;
    private final PictureBytes bytes;
    private final int width;
    private final int height;
    private final int bits;
    private final TiffColour colour;
    private final int samples;
    private final boolean isPlanar;

    TiffFields(TiffDirectory fields) throws IOException {
        this.fields = fields;
        this.bytes = fields.bytes();
        this.width = fields.required(TiffTag.WIDTH);
        this.height = fields.required(TiffTag.HEIGHT);
        this.bits = fields.number(TiffTag.BITS, 1);
        this.colour = TiffColour.of(fields.required(TiffTag.COLOUR));
        this.samples = fields.number(TiffTag.SAMPLES, 1);
        this.isPlanar = fields.number(TiffTag.PLANES, 1) == 2;
    }

    TiffHeader header() throws IOException {
        Alpha alpha = alpha();
        requireUsual(alpha);
        if (width > 0 && height > 0 && width <= Limits.PICTURE_SIDE && height <= Limits.PICTURE_SIDE) {
            requireStretches();
        }
        Orientation orientation = Orientation.ofTag(fields.number(TiffTag.ORIENTATION, 1));
        Optional<ByteBuffer> palette = colour == TiffColour.PALETTE ? Optional.of(palette()) : Optional.empty();
        return new TiffHeader(
                width, height, bits, colour, samples, alpha, orientation, palette, profile(), TiffBytes.of(fields));
    }

    private Alpha alpha() throws IOException {
        if (samples <= colour.colours()) {
            return Alpha.NONE;
        }
        // Some programs write a fourth sample and don't say what it is: it is alpha.
        int said = fields.number(TiffTag.EXTRA_SAMPLES, PLAIN);
        return said == MULTIPLIED ? Alpha.MULTIPLIED : said == PLAIN ? Alpha.PLAIN : Alpha.NONE;
    }

    private void requireUsual(Alpha alpha) throws IOException {
        int compression = fields.number(TiffTag.COMPRESSION, UNCOMPRESSED);
        long[] all = fields.numbers(TiffTag.BITS);
        int extra = samples - colour.colours();
        int known = colour.colours() + (alpha == Alpha.NONE ? 0 : 1);
        int predictor = fields.number(TiffTag.PREDICTOR, 1);
        boolean isUsual = COMPRESSIONS.contains(compression)
                && colour.mayHave(bits)
                && Arrays.stream(all).allMatch(other -> other == bits)
                && Arrays.stream(fields.numbers(TiffTag.SAMPLE_FORMAT)).allMatch(format -> format == 1)
                && (predictor == 1 || (predictor == 2 && bits >= 8))
                && fields.number(TiffTag.INKS, 1) == 1
                && extra >= 0
                && extra <= 4
                && (extra == 0 || bits >= 8)
                && (extra == 0 || (colour != TiffColour.PALETTE && colour != TiffColour.LUMA_CHROMA))
                && (!FAX.contains(compression) || (bits == 1 && samples == 1))
                && (!isPlanar || (samples == known && colour != TiffColour.LUMA_CHROMA));
        if (!isUsual) {
            throw new RefusedPicture(Flaw.RARE_TIFF);
        }
    }

    /** Strips or tiles: as many as the picture has, each inside the file, each of a size that somebody would choose. */
    private void requireStretches() throws IOException {
        boolean isTiled = fields.has(TiffTag.TILES);
        int across = isTiled ? side(TiffTag.TILE_WIDTH, 0) : width;
        int down = isTiled ? side(TiffTag.TILE_HEIGHT, 0) : Math.min(height, side(TiffTag.ROWS_A_STRIP, height));
        long[] places = fields.numbers(isTiled ? TiffTag.TILES : TiffTag.STRIPS);
        long[] lengths = fields.numbers(isTiled ? TiffTag.TILE_BYTES : TiffTag.STRIP_BYTES);
        long planes = isPlanar ? samples : 1;
        long needed = planes * ((width + across - 1) / across) * ((height + down - 1) / down);
        if (places.length < needed || lengths.length < needed) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        boolean isPlain = fields.number(TiffTag.COMPRESSION, UNCOMPRESSED) == UNCOMPRESSED;
        long rowBits = (long) across * bits * (isPlanar ? 1 : samples);
        for (int i = 0; i < needed; i++) {
            if (lengths[i] == 0 || places[i] < 8) {
                throw new RefusedPicture(Flaw.DAMAGED);
            }
            if (places[i] + lengths[i] > bytes.size()) {
                throw new RefusedPicture(Flaw.CUT_SHORT);
            }
            long rows = isTiled ? down : Math.min(down, height - (long) i * down);
            if (isPlain && colour != TiffColour.LUMA_CHROMA && !isPlanar && lengths[i] < (rowBits + 7) / 8 * rows) {
                throw new RefusedPicture(Flaw.CUT_SHORT);
            }
        }
    }

    private int side(int tag, int without) throws IOException {
        long[] said = fields.numbers(tag);
        long side = said.length == 0 ? without : said[0];
        if (side <= 0) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        // As many rows as there are, whatever that is, is what the largest number says.
        if (tag != TiffTag.ROWS_A_STRIP && side > Limits.PICTURE_SIDE) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        return (int) Math.min(side, Integer.MAX_VALUE);
    }

    /** 16 bits a value, all reds first; some programs wrote 8 (common practice to forgive that). */
    private ByteBuffer palette() throws IOException {
        int colours = 1 << bits;
        long[] values = fields.numbers(TiffTag.PALETTE);
        if (values.length < 3 * colours) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        boolean isOfBytes = Arrays.stream(values).allMatch(value -> value < SHORTS);
        byte[] palette = new byte[3 * colours];
        for (int i = 0; i < colours; i++) {
            for (int c = 0; c < 3; c++) {
                long value = values[c * colours + i];
                palette[3 * i + c] = (byte) (isOfBytes ? value : value / SHORTS);
            }
        }
        return ByteBuffer.wrap(palette).asReadOnlyBuffer();
    }

    private Optional<Span> profile() {
        try {
            return fields.find(TiffTag.PROFILE)
                    .map(TiffDirectory.Field::values)
                    .filter(span -> span.length() <= Limits.PROFILE_BYTES);
        } catch (IOException e) {
            return Optional.empty(); // one that leads out of the file is none
        }
    }
}
