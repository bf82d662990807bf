package bandwright.pipeline.write.pdf;

import bandwright.pipeline.pixels.PngFilter;
import java.io.IOException;
import java.util.Arrays;

/** Rows of samples of 1 to 16 bits with PNG filters, the high bits first (ISO/IEC 15948, 7.2). */
final class SampleRows {
    private static final int WIDE = 16;
    private static final int BYTE = 8;

    private final Repacked out;
    private final int width;
    private final int channels;
    private final int bits;
    private final int distance;
    private byte[] plain;
    private byte[] above;
    private final byte[] filtered;

    SampleRows(Repacked out, int width, int channels, int bits) {
        this.out = out;
        this.width = width;
        this.channels = channels;
        this.bits = bits;
        this.distance = Math.max(1, channels * bits / BYTE);
        this.plain = new byte[1 + (int) (((long) width * channels * bits + BYTE - 1) / BYTE)];
        this.above = new byte[plain.length];
        this.filtered = new byte[plain.length];
    }

    /**
     * Writes the next row.
     *
     * @param first where the first pixel's first sample stands
     * @param step from one pixel to the next
     */
    void write(int[] row, int first, int step) throws IOException {
        long bit = BYTE; // the filter's byte stands in front
        Arrays.fill(plain, (byte) 0);
        for (int x = 0, from = first; x < width; x++, from += step) {
            for (int c = 0; c < channels; c++) {
                put(bit, row[from + c]);
                bit += bits;
            }
        }
        PngFilter.apply(plain, above, distance, filtered);
        out.write(filtered);
        byte[] free = above;
        above = plain;
        plain = free;
    }

    private void put(long bit, int sample) {
        int at = (int) (bit / BYTE);
        if (bits == WIDE) {
            plain[at] = (byte) (sample >> BYTE);
            plain[at + 1] = (byte) sample;
        } else {
            plain[at] |= (byte) (sample << (BYTE - bits - (int) (bit % BYTE)));
        }
    }
}
