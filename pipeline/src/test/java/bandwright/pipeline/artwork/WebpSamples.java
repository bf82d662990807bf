package bandwright.pipeline.artwork;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;

/** Makes small WebPs: lossless ones of literal pixels without any transform (RFC 9649, 3), and their chunks. */
public final class WebpSamples {
    /** A lossy picture of 32 x 16: eight upright stripes, white, black, red, green, blue, two greys and amber. */
    public static final byte[] LOSSY = Base64.getDecoder()
            .decode(
                    "UklGRo4AAABXRUJQVlA4IIIAAADwBQCdASogABAALk02m02hJCQkBABMS2AF2XgMoE4A/qv5Ab3/n6u6AfzPK/7JACY/VX1IQBkJwAD+/vOkanzrmtFXjrUWHaULX/68vgP/Pr/Fubd/l+tZ53ea4D9ob7rI653ftBLoEpY/+cg7t2d6S+5+uCJdj7YXs8+mlQQZ0AAA");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private long held;
    private int heldBits;

    private WebpSamples() {}

    /** The VP8L chunk's content. */
    public static byte[] lossless(int width, int height, boolean hasAlpha, int[] argb) {
        WebpSamples bits = new WebpSamples();
        bits.put(0x2F, 8);
        bits.put(width - 1, 14);
        bits.put(height - 1, 14);
        bits.put(hasAlpha ? 1 : 0, 1);
        bits.put(0, 3); // version
        bits.put(0, 1); // no transform
        bits.put(0, 1); // no colour cache
        bits.put(0, 1); // one group of prefix codes
        bits.code(280);
        for (int i = 0; i < 3; i++) {
            bits.code(256);
        }
        bits.put(1, 1); // a simple code of one symbol, 0: distances, of which there are none
        bits.put(0, 1);
        bits.put(0, 1);
        bits.put(0, 1);
        for (int pixel : argb) {
            bits.literal(pixel >> 8);
            bits.literal(pixel >> 16);
            bits.literal(pixel);
            bits.literal(pixel >>> 24);
        }
        bits.put(0, 7);
        bits.out.write((int) bits.held);
        return bits.out.toByteArray();
    }

    /** The first 256 symbols with codes of 8 bits, the others with none: one code length, 8, as a simple code of its own. */
    private void code(int symbols) {
        put(0, 1); // by code lengths
        // Order of code lengths: 17 18 0 1 2 3 4 5 16 6 7 8; of these 18 (a run of zeros) and 8 have a code of one bit.
        put(12 - 4, 4);
        for (int symbol : new int[] {17, 18, 0, 1, 2, 3, 4, 5, 16, 6, 7, 8}) {
            put(symbol == 18 || symbol == 8 ? 1 : 0, 3);
        }
        put(0, 1); // as many lengths as there are symbols
        for (int i = 0; i < 256; i++) {
            put(0, 1); // 8 comes before 18
        }
        if (symbols > 256) {
            put(1, 1); // 18: zeros
            put(symbols - 256 - 11, 7);
        }
    }

    /** Prefix codes are stored from their high bit on. */
    private void literal(int value) {
        put(Integer.reverse(value & 255) >>> 24, 8);
    }

    private void put(long value, int count) {
        held |= value << heldBits;
        heldBits += count;
        while (heldBits >= 8) {
            out.write((int) held & 255);
            held >>>= 8;
            heldBits -= 8;
        }
    }

    public static byte[] chunk(String type, byte[] content) {
        ByteBuffer chunk =
                ByteBuffer.allocate(8 + content.length + content.length % 2).order(ByteOrder.LITTLE_ENDIAN);
        chunk.put(type.getBytes(StandardCharsets.US_ASCII))
                .putInt(content.length)
                .put(content);
        return chunk.array();
    }

    public static byte[] file(byte[]... chunks) {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes("WEBP".getBytes(StandardCharsets.US_ASCII));
        for (byte[] chunk : chunks) {
            body.writeBytes(chunk);
        }
        return chunk("RIFF", body.toByteArray());
    }

    /** A canvas with flags: 0x20 profile, 0x10 alpha, 0x08 Exif, 0x02 moves. */
    public static byte[] canvas(int flags, int width, int height) {
        ByteBuffer content = ByteBuffer.allocate(12).order(ByteOrder.LITTLE_ENDIAN);
        content.putInt(flags).putInt(width - 1).position(7);
        content.putInt(height - 1);
        return chunk("VP8X", Arrays.copyOf(content.array(), 10));
    }
}
