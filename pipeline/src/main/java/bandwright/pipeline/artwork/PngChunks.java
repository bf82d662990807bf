package bandwright.pipeline.artwork;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Walks the chunks of a PNG from its signature to IEND; critical ones must be whole, others are taken if they are. */
final class PngChunks {
    static final long SIGNATURE = 0x89504E470D0A1A0AL;
    private static final int FIRST = 8;

    private final PictureBytes bytes;
    private final List<Span> data = new ArrayList<>();
    private boolean dataEnded;
    private Optional<Span> palette = Optional.empty();
    private Optional<Span> transparency = Optional.empty();
    private Optional<Span> profile = Optional.empty();
    private boolean srgb;
    private OptionalInt gamma = OptionalInt.empty();
    private List<Integer> chroma = List.of();
    private Orientation orientation = Orientation.TOP_LEFT;

    PngChunks(PictureBytes bytes) {
        this.bytes = bytes;
    }

    PngHeader header() throws IOException {
        Span first = body(FIRST);
        requireSound(first);
        if (!bytes.ascii(FIRST + 4, 4).equals("IHDR") || first.length() != 13) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        int bits = bytes.u8(first.at() + 8);
        PngColour colour = PngColour.of(bytes.u8(first.at() + 9), bits);
        int interlace = bytes.u8(first.at() + 12);
        // Compression and filter have one method each (ISO/IEC 15948, 10.1 and 9.1), interlacing two.
        if (bytes.u16(first.at() + 10) != 0 || interlace > 1) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        walkToEnd(first.end() + 4);
        if (data.isEmpty() || (colour == PngColour.PALETTE && palette.isEmpty())) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        return new PngHeader(
                side(first.at()),
                side(first.at() + 4),
                bits,
                colour,
                interlace == 1,
                orientation,
                data,
                palette,
                transparency,
                new PngColourTag(srgb, profile, gamma, chroma));
    }

    private int side(long at) throws IOException {
        long side = bytes.u32(at);
        if (side > Integer.MAX_VALUE) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        return (int) side;
    }

    private void walkToEnd(long from) throws IOException {
        for (long at = from; ; ) {
            Span body = body(at);
            String type = bytes.ascii(at + 4, 4);
            boolean critical = (type.charAt(0) & 0x20) == 0;
            if (critical) {
                requireSound(body);
                if (type.equals("IEND")) {
                    return;
                }
                takeCritical(type, body);
            } else if (isSound(body)) {
                takeAncillary(type, body);
            }
            dataEnded |= !data.isEmpty() && !type.equals("IDAT");
            at = body.end() + 4;
        }
    }

    /** The content of the chunk at a place. */
    private Span body(long at) throws IOException {
        Span body = new Span(at + 8, bytes.u32(at));
        if (body.length() > Integer.MAX_VALUE) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        bytes.u8(body.end() + 3);
        return body;
    }

    private boolean isSound(Span body) throws IOException {
        return bytes.crc(new Span(body.at() - 4, body.length() + 4)) == bytes.u32(body.end());
    }

    private void requireSound(Span body) throws IOException {
        if (!isSound(body)) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
    }

    private void takeCritical(String type, Span body) throws RefusedPicture {
        boolean sound = type.equals("IDAT")
                ? !dataEnded
                : type.equals("PLTE")
                        && palette.isEmpty()
                        && data.isEmpty()
                        && body.length() % 3 == 0
                        && body.length() > 0
                        && body.length() <= 768;
        if (!sound) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        if (type.equals("IDAT")) {
            data.add(body);
        } else {
            palette = Optional.of(body);
        }
    }

    private void takeAncillary(String type, Span body) throws IOException {
        switch (type) {
            case "tRNS" -> transparency = Optional.of(body);
            case "iCCP" -> profile = Optional.of(body);
            case "sRGB" -> srgb = true;
            // Primaries of BT.709, the transfer curve of sRGB, full range (ITU-T H.273).
            case "cICP" -> srgb |= body.length() == 4 && bytes.u32(body.at()) == 0x010D0001L;
            case "gAMA" -> gamma = positive(body);
            case "cHRM" -> chroma = chromaticities(body);
            case "eXIf" -> {
                if (body.length() <= ExifOrientation.MOST_BYTES) {
                    orientation = ExifOrientation.of(bytes.bytes(body), 0);
                }
            }
            default -> {
                // text, times, thumbnails: nothing that is printed
            }
        }
    }

    private OptionalInt positive(Span body) throws IOException {
        long value = body.length() == 4 ? bytes.u32(body.at()) : 0;
        return value > 0 && value <= 1_000_000 ? OptionalInt.of((int) value) : OptionalInt.empty();
    }

    private List<Integer> chromaticities(Span body) throws IOException {
        if (body.length() != 32) {
            return List.of();
        }
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            long value = bytes.u32(body.at() + 4L * i);
            if (value > 100_000 || (i % 2 == 1 && value == 0)) {
                return List.of();
            }
            all.add((int) value);
        }
        return all;
    }
}
