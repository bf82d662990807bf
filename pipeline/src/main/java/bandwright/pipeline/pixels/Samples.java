package bandwright.pipeline.pixels;

/** Samples of fewer than eight bits in a row of PNG data, the leftmost in the high bits (ISO/IEC 15948, 7.2). */
public final class Samples {
    private Samples() {}

    /** The sample of that number in the bytes that begin at {@code start}. */
    public static int at(byte[] row, int start, int number, int bits) {
        return (row[start + (number * bits / 8)] >> shift(number, bits)) & ((1 << bits) - 1);
    }

    /** Puts a sample into bytes that begin at {@code start} and hold zeros there. */
    public static void put(byte[] row, int start, int number, int bits, int sample) {
        row[start + (number * bits / 8)] |= (byte) (sample << shift(number, bits));
    }

    private static int shift(int number, int bits) {
        return 8 - bits - (number * bits % 8);
    }
}
