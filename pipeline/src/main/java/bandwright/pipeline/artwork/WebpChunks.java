package bandwright.pipeline.artwork;

import bandwright.pipeline.limits.Limits;
import java.io.IOException;
import java.util.Optional;

/** Walks the chunks of a WebP. */
final class WebpChunks {
    private static final int FIRST = 12;
    private static final int FRAME_HEADER = 16;

    private final PictureBytes bytes;
    private boolean isFirst = true;
    private boolean isExtended;
    private boolean moves;
    private boolean hasPicture;
    private int width;
    private int height;
    private Optional<Span> profile = Optional.empty();
    private Orientation orientation = Orientation.TOP_LEFT;

    WebpChunks(PictureBytes bytes) {
        this.bytes = bytes;
    }

    WebpHeader header() throws IOException {
        long end = 8 + bytes.u32le(4);
        if (end > bytes.size()) {
            throw new RefusedPicture(Flaw.CUT_SHORT);
        }
        walk(new Span(FIRST, Math.max(0, end - FIRST)));
        if (!hasPicture) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        return new WebpHeader(width, height, orientation, profile);
    }

    private void walk(Span room) throws IOException {
        long at = room.at();
        while (at + 8 <= room.end()) {
            Span body = new Span(at + 8, bytes.u32le(at + 4));
            if (body.end() > room.end()) {
                throw new RefusedPicture(Flaw.CUT_SHORT);
            }
            take(bytes.ascii(at, 4), body);
            isFirst = false;
            at = body.end() + body.length() % 2;
        }
    }

    private void take(String type, Span body) throws IOException {
        if (isFirst && type.equals("VP8X")) {
            takeCanvas(body);
            return;
        }
        if (isFirst && !type.startsWith("VP8")) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        switch (type) {
            case "VP8 " ->
                takePicture(body, 6, bytes.u16le(body.at() + 6) & 0x3FFF, bytes.u16le(body.at() + 8) & 0x3FFF);
            case "VP8L" -> takeLossless(body);
            case "ANMF" -> takeFrame(body);
            case "ICCP" -> profile = body.length() <= Limits.PROFILE_BYTES ? Optional.of(body) : Optional.empty();
            case "EXIF" -> takeExif(body);
            default -> {
                // alpha, which the picture's decoder reads; notes; nothing else that is printed
            }
        }
    }

    private void takeCanvas(Span body) throws IOException {
        if (body.length() != 10) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        isExtended = true;
        moves = (bytes.u8(body.at()) & 0x02) != 0;
        width = 1 + u24(body.at() + 4);
        height = 1 + u24(body.at() + 7);
    }

    /** Of a moving picture the first one counts, however small its part of the canvas. */
    private void takeFrame(Span body) throws IOException {
        if (!moves || hasPicture) {
            return;
        }
        if (body.length() < FRAME_HEADER) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        width = 1 + u24(body.at() + 6);
        height = 1 + u24(body.at() + 9);
        moves = false;
        walk(new Span(body.at() + FRAME_HEADER, body.length() - FRAME_HEADER));
        moves = true;
        if (!hasPicture) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
    }

    /** RFC 9649, 3.4: a signature, 14 bits of width less one, 14 bits of height less one. */
    private void takeLossless(Span body) throws IOException {
        long sizes = bytes.u32le(body.at() + 1);
        takePicture(body, 5, 1 + (int) (sizes & 0x3FFF), 1 + (int) (sizes >> 14 & 0x3FFF));
    }

    private void takePicture(Span body, int least, int across, int down) throws RefusedPicture {
        if (moves) {
            return; // the decoder passes over what stands outside the frames
        }
        boolean fits = !isExtended || (across == width && down == height);
        if (hasPicture || body.length() < least || !fits) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        hasPicture = true;
        width = across;
        height = down;
    }

    /** Some programs put JPEG's mark before the TIFF header. */
    private void takeExif(Span body) throws IOException {
        if (body.length() < 8 || body.length() > ExifOrientation.MOST_BYTES) {
            return;
        }
        int skip = bytes.ascii(body.at(), 6).equals("Exif\0\0") ? 6 : 0;
        orientation = ExifOrientation.of(bytes.bytes(body), skip);
    }

    private int u24(long at) throws IOException {
        return bytes.u16le(at) | bytes.u8(at + 2) << 16;
    }
}
