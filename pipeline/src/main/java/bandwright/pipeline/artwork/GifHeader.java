package bandwright.pipeline.artwork;

import java.io.IOException;
import java.util.OptionalInt;

/**
 * What a GIF says about its first picture (GIF89a specification). Where that is smaller than the screen that it is shown
 * on, it alone is the picture.
 *
 * @param palette three bytes a colour
 * @param transparent the number of the colour that isn't painted
 * @param codeBits of the first code of its packed data
 * @param data where those begin, in blocks of at most 255 bytes
 */
public record GifHeader(
        int width, int height, boolean interlaced, Span palette, OptionalInt transparent, int codeBits, long data) {
    private static final int SCREEN = 13;
    private static final int EXTENSION = 0x21;
    private static final int PICTURE = 0x2C;
    private static final int CONTROL = 0xF9;

    /** Walks the blocks up to the first picture. */
    public static GifHeader read(PictureBytes bytes) throws IOException {
        Span global = table(SCREEN, bytes.u8(10));
        OptionalInt transparent = OptionalInt.empty();
        long at = global.end();
        while (bytes.u8(at) == EXTENSION) {
            if (bytes.u8(at + 1) == CONTROL && bytes.u8(at + 2) >= 4) {
                boolean has = (bytes.u8(at + 3) & 1) == 1;
                transparent = has ? OptionalInt.of(bytes.u8(at + 6)) : OptionalInt.empty();
            }
            at = afterBlocks(bytes, at + 2);
        }
        if (bytes.u8(at) != PICTURE) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        int flags = bytes.u8(at + 9);
        Span local = table(at + 10, flags);
        Span palette = local.length() > 0 ? local : global;
        int codeBits = bytes.u8(local.end()) + 1;
        if (palette.length() == 0 || codeBits < 2 || codeBits > 9) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        return new GifHeader(
                bytes.u16le(at + 5),
                bytes.u16le(at + 7),
                (flags & 0x40) != 0,
                palette,
                transparent,
                codeBits,
                local.end() + 1);
    }

    /** A table of colours, if the flags say that one stands there. */
    private static Span table(long at, int flags) {
        return new Span(at, (flags & 0x80) == 0 ? 0 : 3L << ((flags & 7) + 1));
    }

    private static long afterBlocks(PictureBytes bytes, long at) throws IOException {
        long next = at;
        while (bytes.u8(next) != 0) {
            next += 1 + bytes.u8(next);
        }
        return next + 1;
    }

    /** Which row of the picture is stored at a place: interlaced ones come in four passes. */
    public int row(int stored) {
        if (!interlaced) {
            return stored;
        }
        int[][] passes = {{0, 8}, {4, 8}, {2, 4}, {1, 2}};
        int left = stored;
        for (int[] pass : passes) {
            int rows = (height - pass[0] + pass[1] - 1) / pass[1];
            if (left < rows) {
                return pass[0] + left * pass[1];
            }
            left -= rows;
        }
        throw new IllegalArgumentException(stored + " of " + height);
    }
}
