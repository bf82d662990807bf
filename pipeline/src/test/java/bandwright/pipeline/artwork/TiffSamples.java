package bandwright.pipeline.artwork;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.zip.Deflater;

/** Makes small TIFFs of random samples, field by field, so that any of them can be wrong. */
public final class TiffSamples {
    private static final int SHORT = 3;
    private static final int LONG = 4;

    private final int width;
    private final int height;
    private final int bits;
    private final int samples;
    private final int[] values;
    private final Map<Integer, long[]> fields = new TreeMap<>();
    private ByteOrder order = ByteOrder.LITTLE_ENDIAN;
    private boolean deflated;
    private boolean planar;
    private int tile;
    private int rowsAStrip = 5;
    private byte[] profile = new byte[0];

    private TiffSamples(int width, int height, int bits, int samples) {
        this.width = width;
        this.height = height;
        this.bits = bits;
        this.samples = samples;
        SplittableRandom random = new SplittableRandom(width + 31L * bits + samples);
        this.values = random.ints((long) width * height * samples, 0, 1 << bits).toArray();
    }

    /** A picture of random samples; its colour is TIFF's own code: 0 and 1 grey, 2 RGB, 3 palette, 5 inks. */
    public static TiffSamples of(int width, int height, int bits, int colour, int samples) {
        TiffSamples tiff = new TiffSamples(width, height, bits, samples);
        tiff.field(TiffTag.WIDTH, width).field(TiffTag.HEIGHT, height).field(TiffTag.COLOUR, colour);
        long[] depths = new long[samples];
        Arrays.fill(depths, bits);
        tiff.field(TiffTag.BITS, depths).field(TiffTag.SAMPLES, samples);
        if (colour == 3) {
            tiff.field(
                    TiffTag.PALETTE,
                    new SplittableRandom(7).longs(3L << bits, 0, 65_536).toArray());
        }
        return tiff;
    }

    public TiffSamples field(int tag, long... numbers) {
        fields.put(tag, numbers);
        return this;
    }

    public TiffSamples without(int tag) {
        fields.put(tag, new long[0]);
        return this;
    }

    public TiffSamples motorola() {
        order = ByteOrder.BIG_ENDIAN;
        return this;
    }

    public TiffSamples deflated() {
        deflated = true;
        return field(TiffTag.COMPRESSION, 8);
    }

    public TiffSamples planar() {
        planar = true;
        return field(TiffTag.PLANES, 2);
    }

    public TiffSamples tiled(int side) {
        tile = side;
        return this;
    }

    public TiffSamples inOneStrip() {
        rowsAStrip = height;
        return this;
    }

    public TiffSamples profile(byte[] icc) {
        profile = icc.clone();
        return this;
    }

    /** The sample of a pixel. */
    public int value(int x, int y, int sample) {
        return values[(y * width + x) * samples + sample];
    }

    public TiffSamples set(int x, int y, int sample, int value) {
        values[(y * width + x) * samples + sample] = value;
        return this;
    }

    public byte[] file() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[8]);
        int across = tile > 0 ? tile : width;
        int down = tile > 0 ? tile : rowsAStrip;
        List<Long> places = new ArrayList<>();
        List<Long> lengths = new ArrayList<>();
        for (int plane = 0; plane < (planar ? samples : 1); plane++) {
            for (int top = 0; top < height; top += down) {
                for (int left = 0; left < width; left += across) {
                    byte[] stretch = stretch(left, top, across, tile > 0 ? down : Math.min(down, height - top), plane);
                    places.add((long) out.size());
                    lengths.add((long) stretch.length);
                    out.writeBytes(stretch);
                }
            }
        }
        long iccAt = out.size();
        out.writeBytes(profile);
        if (out.size() % 2 == 1) {
            out.write(0);
        }
        fields.putIfAbsent(tile > 0 ? TiffTag.TILES : TiffTag.STRIPS, longs(places));
        fields.putIfAbsent(tile > 0 ? TiffTag.TILE_BYTES : TiffTag.STRIP_BYTES, longs(lengths));
        if (tile > 0) {
            fields.putIfAbsent(TiffTag.TILE_WIDTH, new long[] {tile});
            fields.putIfAbsent(TiffTag.TILE_HEIGHT, new long[] {tile});
        } else {
            fields.putIfAbsent(TiffTag.ROWS_A_STRIP, new long[] {rowsAStrip});
        }
        return withDirectory(out, iccAt);
    }

    private static long[] longs(List<Long> numbers) {
        return numbers.stream().mapToLong(Long::longValue).toArray();
    }

    private byte[] withDirectory(ByteArrayOutputStream out, long iccAt) {
        int at = out.size();
        fields.values().removeIf(numbers -> numbers.length == 0);
        int count = fields.size() + (profile.length > 0 ? 1 : 0);
        ByteBuffer directory = ByteBuffer.allocate(2 + 12 * count + 4).order(order);
        ByteArrayOutputStream more = new ByteArrayOutputStream();
        directory.putShort((short) count);
        fields.forEach((tag, numbers) -> {
            boolean isShort = tag == TiffTag.BITS || tag == TiffTag.PALETTE || tag == TiffTag.COLOUR;
            ByteBuffer content =
                    ByteBuffer.allocate((isShort ? 2 : 4) * numbers.length + 2).order(order);
            for (long number : numbers) {
                if (isShort) {
                    content.putShort((short) number);
                } else {
                    content.putInt((int) number);
                }
            }
            int length = content.position();
            directory
                    .putShort(tag.shortValue())
                    .putShort((short) (isShort ? SHORT : LONG))
                    .putInt(numbers.length);
            if (length <= 4) {
                directory
                        .put(content.array(), 0, 2)
                        .put(length == 2 ? new byte[2] : Arrays.copyOfRange(content.array(), 2, 4));
            } else {
                directory.putInt(at + directory.capacity() + more.size());
                more.write(content.array(), 0, length);
            }
        });
        if (profile.length > 0) {
            directory
                    .putShort((short) TiffTag.PROFILE)
                    .putShort((short) 7)
                    .putInt(profile.length)
                    .putInt((int) iccAt);
        }
        out.writeBytes(directory.array());
        out.writeBytes(more.toByteArray());
        byte[] file = out.toByteArray();
        ByteBuffer.wrap(file)
                .order(order)
                .put((byte) (order == ByteOrder.BIG_ENDIAN ? 'M' : 'I'))
                .put((byte) (order == ByteOrder.BIG_ENDIAN ? 'M' : 'I'))
                .putShort((short) 42)
                .putInt(at);
        return file;
    }

    private byte[] stretch(int left, int top, int across, int down, int plane) {
        int channels = planar ? 1 : samples;
        int rowBytes = (across * channels * bits + 7) / 8;
        byte[] plain = new byte[rowBytes * down];
        for (int y = 0; y < down; y++) {
            for (int i = 0; i < across * channels; i++) {
                int x = left + i / channels;
                if (x < width && top + y < height) {
                    put(plain, y * rowBytes, i, value(x, top + y, planar ? plane : i % channels));
                }
            }
        }
        return deflated ? packed(plain) : plain;
    }

    private void put(byte[] row, int at, int i, int value) {
        if (bits == 16) {
            ByteBuffer.wrap(row).order(order).putShort(at + 2 * i, (short) value);
        } else {
            row[at + i * bits / 8] |= (byte) (value << (8 - bits - i * bits % 8));
        }
    }

    public static byte[] packed(byte[] plain) {
        Deflater deflater = new Deflater();
        deflater.setInput(plain);
        deflater.finish();
        byte[] out = new byte[plain.length + 100];
        int length = deflater.deflate(out);
        deflater.end();
        return Arrays.copyOf(out, length);
    }
}
