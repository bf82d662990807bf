package bandwright.pipeline.artwork;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/** Writes small PNGs of any kind, with every row filter, independent of the code that reads them. */
public final class PngSamples {
    private final ByteArrayOutputStream file = new ByteArrayOutputStream();
    private final int width;
    private final int height;
    private final int bits;
    private final int colour;
    private final boolean interlaced;
    private final byte[][] rows;

    private PngSamples(int width, int height, int bits, int colour, boolean interlaced, long seed) {
        this.width = width;
        this.height = height;
        this.bits = bits;
        this.colour = colour;
        this.interlaced = interlaced;
        SplittableRandom random = new SplittableRandom(seed);
        rows = new byte[height][(width * bits * channels() + 7) / 8];
        for (int y = 0; y < height; y++) {
            for (int i = 0; i < rows[y].length; i++) {
                // Smooth with a little noise, so that all filters have something to do.
                rows[y][i] = (byte) (7 * y + 5 * i + random.nextInt(24));
            }
        }
        begin();
    }

    /**
     * Noise in that kind of pixels.
     *
     * @param colour the code of ISO/IEC 15948: 0 grey, 2 RGB, 3 palette, 4 grey with alpha, 6 RGB with alpha
     */
    public static PngSamples of(int width, int height, int bits, int colour) {
        return new PngSamples(width, height, bits, colour, false, 20260302L);
    }

    public static PngSamples interlaced(int width, int height, int bits, int colour) {
        return new PngSamples(width, height, bits, colour, true, 20260302L);
    }

    public static byte[] headerOnly(int width, int height) {
        PngSamples png = new PngSamples(width, 0, 8, 2, false, 1);
        png.file.reset();
        png.signature();
        png.chunk("IHDR", png.header(height));
        return png.chunk("IDAT", deflated(new byte[1000])).chunk("IEND").file.toByteArray();
    }

    /** Sets the last sample of each pixel of an alpha kind to the largest value. */
    public PngSamples opaque() {
        int pixel = channels() * bits / 8;
        for (byte[] row : rows) {
            for (int i = pixel - bits / 8; i < row.length; i += pixel) {
                for (int k = 0; k < bits / 8; k++) {
                    row[i + k] = -1;
                }
            }
        }
        return this;
    }

    public PngSamples chunk(String type, byte... content) {
        try {
            DataOutputStream out = new DataOutputStream(file);
            byte[] name = type.getBytes(StandardCharsets.US_ASCII);
            CRC32 crc = new CRC32();
            crc.update(name);
            crc.update(content);
            out.writeInt(content.length);
            out.write(name);
            out.write(content);
            out.writeInt((int) crc.getValue());
            return this;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A palette of as many colours as the depth has. */
    public PngSamples palette() {
        byte[] colours = new byte[3 << bits];
        for (int i = 0; i < colours.length; i++) {
            colours[i] = (byte) (37 * i + 11);
        }
        return chunk("PLTE", colours);
    }

    public byte[] packed() {
        ByteArrayOutputStream raw = new ByteArrayOutputStream();
        if (!interlaced) {
            filterAll(rows, raw);
            return deflated(raw.toByteArray());
        }
        int[][] passes = {
            {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
        };
        for (int[] pass : passes) {
            filterAll(pass(pass), raw);
        }
        return deflated(raw.toByteArray());
    }

    /** The finished file, its pixels in two chunks. */
    public byte[] file() {
        byte[] packed = packed();
        int half = packed.length / 2;
        chunk("IDAT", Arrays.copyOfRange(packed, 0, half));
        chunk("IDAT", Arrays.copyOfRange(packed, half, packed.length));
        return chunk("IEND").file.toByteArray();
    }

    /** A file whose chunks are sound, whatever their pixels unpack to. */
    public byte[] fileOf(byte[] packed) {
        return chunk("IDAT", packed).chunk("IEND").file.toByteArray();
    }

    private byte[][] pass(int[] pass) {
        int columns = (width - pass[0] + pass[2] - 1) / pass[2];
        int lines = (height - pass[1] + pass[3] - 1) / pass[3];
        if (columns <= 0 || lines <= 0) {
            return new byte[0][];
        }
        int pixel = bits * channels();
        byte[][] out = new byte[lines][(columns * pixel + 7) / 8];
        for (int y = 0; y < lines; y++) {
            for (int x = 0; x < columns * pixel; x++) {
                int from = (pass[0] + x / pixel * pass[2]) * pixel + x % pixel;
                int bit = (rows[pass[1] + y * pass[3]][from / 8] >> (7 - from % 8)) & 1;
                out[y][x / 8] |= (byte) (bit << (7 - x % 8));
            }
        }
        return out;
    }

    private void filterAll(byte[][] plain, ByteArrayOutputStream out) {
        int distance = Math.max(1, bits * channels() / 8);
        for (int y = 0; y < plain.length; y++) {
            int filter = y % 5;
            out.write(filter);
            for (int i = 0; i < plain[y].length; i++) {
                int a = i < distance ? 0 : plain[y][i - distance] & 0xFF;
                int b = y == 0 ? 0 : plain[y - 1][i] & 0xFF;
                int c = y == 0 || i < distance ? 0 : plain[y - 1][i - distance] & 0xFF;
                int predicted =
                        switch (filter) {
                            case 0 -> 0;
                            case 1 -> a;
                            case 2 -> b;
                            case 3 -> (a + b) / 2;
                            default -> paeth(a, b, c);
                        };
                out.write(plain[y][i] - predicted);
            }
        }
    }

    private static int paeth(int a, int b, int c) {
        int p = a + b - c;
        int pa = Math.abs(p - a);
        int pb = Math.abs(p - b);
        int pc = Math.abs(p - c);
        return pa <= pb && pa <= pc ? a : pb <= pc ? b : c;
    }

    private int channels() {
        return switch (colour) {
            case 2 -> 3;
            case 4 -> 2;
            case 6 -> 4;
            default -> 1;
        };
    }

    private void begin() {
        signature();
        chunk("IHDR", header(height));
    }

    private void signature() {
        file.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
    }

    private byte[] header(int lines) {
        return ByteBuffer.allocate(13)
                .putInt(width)
                .putInt(lines)
                .put((byte) bits)
                .put((byte) colour)
                .put((byte) 0)
                .put((byte) 0)
                .put((byte) (interlaced ? 1 : 0))
                .array();
    }

    public static byte[] deflated(byte[] raw) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflate = new DeflaterOutputStream(out)) {
            deflate.write(raw);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return out.toByteArray();
    }
}
