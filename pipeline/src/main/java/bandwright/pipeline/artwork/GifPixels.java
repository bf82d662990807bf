package bandwright.pipeline.artwork;

import java.io.IOException;

/**
 * The first picture of a GIF row by row as it is stored: numbers of colours. Java's own reader passes over data that end
 * too soon, and a picture would print partly blank; this one refuses them.
 */
public final class GifPixels {
    private static final int MOST_CODES = 4096;
    private static final int MOST_BITS = 12;

    private final PictureBytes bytes;
    private final int clear;
    private final int firstBits;
    /** Of every code: the code that it goes on from, and the colour that it adds. */
    private final int[] prefix = new int[MOST_CODES];

    private final byte[] added = new byte[MOST_CODES];
    /** Colours of the last code that are still to come, the next one on top. */
    private final byte[] waiting = new byte[MOST_CODES + 1];

    private int waits;
    private int codes;
    private int bits;
    private int last = -1;
    private int firstColour;
    private long at;
    private int leftInBlock;
    private int held;
    private int heldBits;

    public GifPixels(PictureBytes bytes, GifHeader header) {
        this.bytes = bytes;
        this.at = header.data();
        this.firstBits = header.codeBits();
        this.clear = 1 << (firstBits - 1);
        forget();
        for (int i = 0; i < clear; i++) {
            added[i] = (byte) i;
        }
    }

    /** The next row as stored; {@link GifHeader#row} says which it is. */
    public void next(byte[] row) throws IOException {
        for (int i = 0; i < row.length; i++) {
            if (waits == 0) {
                unpack();
            }
            row[i] = waiting[--waits];
        }
    }

    private void forget() {
        codes = clear + 2;
        bits = firstBits;
        last = -1;
    }

    private void unpack() throws IOException {
        int code = code();
        while (code == clear) {
            forget();
            code = code();
        }
        if (code == clear + 1) {
            throw new RefusedPicture(Flaw.CUT_SHORT);
        }
        if (last < 0 ? code > clear : code > codes) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        int from = code;
        if (last >= 0 && code == codes) { // the code that this very step makes
            waiting[waits++] = (byte) firstColour;
            from = last;
        }
        while (from > clear) {
            waiting[waits++] = added[from];
            from = prefix[from];
        }
        firstColour = from;
        waiting[waits++] = (byte) from;
        remember();
        last = code;
    }

    private void remember() {
        if (last < 0 || codes >= MOST_CODES) {
            return;
        }
        prefix[codes] = last;
        added[codes++] = (byte) firstColour;
        if (codes == 1 << bits && bits < MOST_BITS) {
            bits++;
        }
    }

    private int code() throws IOException {
        while (heldBits < bits) {
            if (leftInBlock == 0) {
                leftInBlock = bytes.u8(at++);
                if (leftInBlock == 0) {
                    throw new RefusedPicture(Flaw.CUT_SHORT);
                }
            }
            held |= bytes.u8(at++) << heldBits;
            heldBits += 8;
            leftInBlock--;
        }
        int code = held & ((1 << bits) - 1);
        held >>>= bits;
        heldBits -= bits;
        return code;
    }
}
