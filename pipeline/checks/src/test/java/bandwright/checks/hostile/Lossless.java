package bandwright.checks.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** A lossless WebP of one colour: five prefix codes of one symbol each, so its pixels take no bit (RFC 9649, 3). */
final class Lossless {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private int held;
    private int heldBits;

    private Lossless() {}

    static byte[] webp(int width, int height) {
        Lossless bits = new Lossless();
        bits.put(0x2F, 8);
        bits.put(width - 1, 14);
        bits.put(height - 1, 14);
        bits.put(1, 1); // it has alpha
        bits.put(0, 3 + 1 + 1 + 1); // version, no transform, no colour cache, one group of codes
        for (int symbol : new int[] {120, 40, 90, 255, 0}) {
            bits.put(1, 1); // a simple code
            bits.put(0, 1); // of one symbol
            bits.put(1, 1); // of 8 bits
            bits.put(symbol, 8);
        }
        bits.put(0, 7);
        byte[] picture = bits.out.toByteArray();
        int padded = picture.length + picture.length % 2;
        ByteBuffer file = ByteBuffer.allocate(20 + padded).order(ByteOrder.LITTLE_ENDIAN);
        file.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(12 + padded);
        file.put("WEBPVP8L".getBytes(StandardCharsets.US_ASCII))
                .putInt(picture.length)
                .put(picture);
        return file.array();
    }

    private void put(int value, int count) {
        for (int i = 0; i < count; i++) {
            held |= (value >> i & 1) << heldBits++;
            if (heldBits == 8) {
                out.write(held);
                held = 0;
                heldBits = 0;
            }
        }
    }
}
