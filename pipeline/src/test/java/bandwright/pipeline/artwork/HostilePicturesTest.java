package bandwright.pipeline.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pictures that somebody made to do harm, or that went to pieces on their way: each is refused by one clear flaw. */
class HostilePicturesTest {
    private static final long MEGABYTE = 1 << 20;

    @TempDir
    Path folder;

    private Found probe(byte[] content) throws IOException {
        Path file = folder.resolve("tern");
        Files.write(file, content);
        return new Probe("tern", file).found();
    }

    private record Hostile(String name, Flaw flaw, ByteBuffer content) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static TiffSamples tiff() {
        return TiffSamples.of(60, 40, 8, 2, 3);
    }

    private static TiffSamples tiff(int tag, long... numbers) {
        return tiff().field(tag, numbers);
    }

    static List<Hostile> hostiles() throws IOException {
        Map<String, TiffSamples> tiffs = new LinkedHashMap<>();
        tiffs.put("NO_PIXELS a TIFF without width", tiff(TiffTag.WIDTH, 0));
        tiffs.put("NO_PIXELS a TIFF without height", tiff(TiffTag.HEIGHT, 0));
        tiffs.put("TOO_MANY_PIXELS a TIFF of four billion columns", tiff(TiffTag.WIDTH, 0xFFFF_FFFFL));
        tiffs.put("TOO_MANY_PIXELS a TIFF of 70,000 columns", tiff(TiffTag.WIDTH, 70_000));
        tiffs.put("DAMAGED a TIFF of 60,000 rows in 8 strips", tiff(TiffTag.HEIGHT, 60_000));
        tiffs.put("DAMAGED a TIFF that doesn't say its width", tiff().without(TiffTag.WIDTH));
        tiffs.put("DAMAGED a TIFF that doesn't say its colours", tiff().without(TiffTag.COLOUR));
        tiffs.put("DAMAGED a TIFF without places of strips", tiff().without(TiffTag.STRIPS));
        tiffs.put("DAMAGED a TIFF without lengths of strips", tiff().without(TiffTag.STRIP_BYTES));
        tiffs.put("DAMAGED a TIFF of strips without rows", tiff(TiffTag.ROWS_A_STRIP, 0));
        tiffs.put("DAMAGED a TIFF with too few strips", tiff(TiffTag.STRIPS, 8, 8));
        tiffs.put("DAMAGED a TIFF of tiles without width", tiff().tiled(16).field(TiffTag.TILE_WIDTH, 0));
        tiffs.put("DAMAGED a TIFF of endless tiles", tiff().tiled(16).field(TiffTag.TILE_HEIGHT, 0xFFFF_FFF0L));
        tiffs.put("DAMAGED a TIFF whose strips lie in its head", tiff(TiffTag.STRIPS, 0, 0, 0, 0, 0, 0, 0, 0));
        long far = 0xFFFF_FF00L;
        tiffs.put(
                "CUT_SHORT a TIFF whose strips lie far away",
                tiff(TiffTag.STRIPS, far, far, far, far, far, far, far, far));
        long much = 0x7FFF_FFFFL;
        tiffs.put(
                "CUT_SHORT a TIFF of long strips",
                tiff(TiffTag.STRIP_BYTES, much, much, much, much, much, much, much, much));
        tiffs.put("CUT_SHORT a TIFF of short strips", tiff(TiffTag.STRIP_BYTES, 9, 9, 9, 9, 9, 9, 9, 9));
        tiffs.put("RARE_TIFF a TIFF of 65,535 bits", tiff(TiffTag.BITS, 65_535, 65_535, 65_535));
        tiffs.put("RARE_TIFF a TIFF of unlike depths", tiff(TiffTag.BITS, 8, 1, 8));
        tiffs.put("RARE_TIFF a TIFF of a billion samples", tiff(TiffTag.SAMPLES, 1_000_000_000));
        tiffs.put("RARE_TIFF a TIFF of no samples", tiff(TiffTag.SAMPLES, 0));
        tiffs.put("RARE_TIFF a TIFF of floating numbers", tiff(TiffTag.SAMPLE_FORMAT, 3, 3, 3));
        tiffs.put("RARE_TIFF a TIFF in Lab", tiff(TiffTag.COLOUR, 8));
        tiffs.put("RARE_TIFF a TIFF packed in an unknown way", tiff(TiffTag.COMPRESSION, 4711));
        tiffs.put("RARE_TIFF a TIFF of old JPEG", tiff(TiffTag.COMPRESSION, 6));
        tiffs.put(
                "RARE_TIFF a TIFF of inks that nobody names",
                TiffSamples.of(60, 40, 8, 5, 4).field(TiffTag.INKS, 2));
        tiffs.put(
                "DAMAGED a TIFF of a short palette",
                TiffSamples.of(60, 40, 8, 3, 1).field(TiffTag.PALETTE, 1, 2, 3));
        tiffs.put("TOO_LARGE_TO_UNPACK a TIFF that unpacks to 190 MB", bomb());
        List<Hostile> all = new ArrayList<>();
        for (Map.Entry<String, TiffSamples> entry : tiffs.entrySet()) {
            String name = entry.getKey();
            all.add(new Hostile(
                    name, flaw(name), ByteBuffer.wrap(entry.getValue().file())));
        }
        others().forEach((name, content) -> all.add(new Hostile(name, flaw(name), ByteBuffer.wrap(content))));
        return all;
    }

    /** One row of zeros, packed, that 8,000 strips share. */
    private static TiffSamples bomb() {
        long[] places = new long[8000];
        Arrays.fill(places, 8);
        long[] lengths = new long[8000];
        Arrays.fill(lengths, 20);
        return TiffSamples.of(60, 40, 8, 2, 3)
                .deflated()
                .field(TiffTag.WIDTH, 8000)
                .field(TiffTag.HEIGHT, 8000)
                .field(TiffTag.ROWS_A_STRIP, 1)
                .field(TiffTag.STRIPS, places)
                .field(TiffTag.STRIP_BYTES, lengths);
    }

    private static Flaw flaw(String name) {
        return Flaw.valueOf(name.substring(0, name.indexOf(' ')));
    }

    private static byte[] patched(byte[] file, int at, int... bytes) {
        byte[] copy = file.clone();
        for (int i = 0; i < bytes.length; i++) {
            copy[at + i] = (byte) bytes[i];
        }
        return copy;
    }

    private static byte[] webp(int width, int height) {
        return WebpSamples.chunk("VP8L", WebpSamples.lossless(width, height, false, new int[12]));
    }

    private static Map<String, byte[]> others() throws IOException {
        Map<String, byte[]> all = new LinkedHashMap<>();
        byte[] whole = tiff().file();
        ByteBuffer in = ByteBuffer.wrap(whole).order(ByteOrder.LITTLE_ENDIAN);
        all.put("CUT_SHORT a TIFF whose directory lies far away", patched(whole, 4, 0xFF, 0xFF, 0xFF, 0x7F));
        all.put("DAMAGED a TIFF whose directory is its head", patched(whole, 4, 0, 0, 0, 0));
        all.put("RARE_TIFF a TIFF for over 4 GB", patched(whole, 2, 43, 0));
        all.put("DAMAGED a TIFF of 65,535 fields", patched(whole, in.getInt(4), 0xFF, 0xFF));
        all.put(
                "DAMAGED a TIFF whose packed strip is rubbish",
                patched(tiff().deflated().file(), 8, 1, 2, 3, 4, 5, 6));
        byte[] lossless = WebpSamples.file(webp(4, 3));
        all.put("CUT_SHORT a WebP that promises 2 GB", patched(lossless, 4, 0xFF, 0xFF, 0xFF, 0x7F));
        all.put("CUT_SHORT a WebP whose picture promises 2 GB", patched(lossless, 16, 0xFF, 0xFF, 0xFF, 0x7F));
        all.put("DAMAGED a WebP without a picture", WebpSamples.file(WebpSamples.canvas(0, 4, 3)));
        all.put(
                "DAMAGED a WebP that begins with notes",
                WebpSamples.file(WebpSamples.chunk("EXIF", new byte[9]), webp(4, 3)));
        all.put(
                "DAMAGED a WebP of two pictures",
                WebpSamples.file(WebpSamples.canvas(0, 4, 3), webp(4, 3), webp(4, 3)));
        all.put(
                "DAMAGED a WebP whose picture isn't its canvas",
                WebpSamples.file(WebpSamples.canvas(0, 9, 9), webp(4, 3)));
        all.put(
                "DAMAGED a WebP of 200 megapixels in a canvas, small inside",
                WebpSamples.file(WebpSamples.canvas(0, 16_000, 12_500), webp(4, 3)));
        all.put("TOO_LARGE_TO_UNPACK a WebP of 200 megapixels in 1,400 bytes", WebpSamples.file(webp(16_000, 12_500)));
        all.put("DAMAGED a WebP that moves without a frame", WebpSamples.file(WebpSamples.canvas(2, 4, 3), webp(4, 3)));
        byte[] frame = new byte[16];
        all.put(
                "DAMAGED a WebP with an empty frame",
                WebpSamples.file(WebpSamples.canvas(2, 4, 3), WebpSamples.chunk("ANMF", frame)));
        byte[] gif = gif();
        int picture = pictureAt(gif);
        all.put("NO_PIXELS a GIF without width", patched(gif, picture + 5, 0, 0));
        all.put("TOO_LARGE_TO_UNPACK a GIF of 225 megapixels", patched(gif, picture + 5, 0x98, 0x3A, 0x98, 0x3A));
        all.put("TOO_MANY_PIXELS a GIF of 4 gigapixels", patched(gif, picture + 5, 0xFF, 0xFF, 0xFF, 0xFF));
        all.put("CUT_SHORT a GIF that promises more rows", patched(gif, picture + 7, 0xFF, 0x00));
        all.put("DAMAGED a GIF without colours", patched(gif, 10, 0));
        all.put("DAMAGED a GIF without a picture", patched(gif, picture, 0x3B));
        all.put("DAMAGED a GIF of 90-bit codes", patched(gif, picture + 10, 90));
        ByteArrayOutputStream endless = new ByteArrayOutputStream();
        endless.write(gif, 0, picture);
        for (int i = 0; i < 100_000; i++) {
            endless.writeBytes(new byte[] {0x21, (byte) 0xFF, 1, 0, 0}); // notes without end
        }
        all.put("CUT_SHORT a GIF of nothing but notes", endless.toByteArray());
        return all;
    }

    private static byte[] gif() throws IOException {
        BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_BYTE_INDEXED);
        int[] numbers = new SplittableRandom(4).ints(2400, 0, 200).toArray();
        image.getRaster().setPixels(0, 0, 60, 40, numbers);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "gif", out);
        return out.toByteArray();
    }

    private static int pictureAt(byte[] gif) {
        int at = 13 + 768;
        while (gif[at] == 0x21) {
            at += 2;
            while (gif[at] != 0) {
                at += 1 + (gif[at] & 255);
            }
            at++;
        }
        return at;
    }

    @ParameterizedTest
    @MethodSource("hostiles")
    void eachIsRefusedByOneClearFlawAndTakesLittle(Hostile hostile) throws IOException {
        long before = allocated();
        Found found = probe(hostile.content().array());
        assertThat(found).isEqualTo(new Found.Refused("tern", hostile.flaw()));
        assertThat((allocated() - before) / MEGABYTE).as("megabytes").isLessThan(20);
    }

    private static long allocated() {
        return ((ThreadMXBean) ManagementFactory.getThreadMXBean()).getCurrentThreadAllocatedBytes();
    }

    @Test
    void directoriesInCirclesAreNotFollowed() throws IOException {
        byte[] file = tiff().file();
        ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        int directory = in.getInt(4);
        in.putInt(directory + 2 + 12 * in.getShort(directory), directory);
        assertThat(probe(file)).isInstanceOf(Found.Picture.class);
    }

    private static Stream<byte[]> sound() throws IOException {
        return Stream.of(
                tiff().file(),
                tiff().deflated().file(),
                tiff().tiled(16).deflated().file(),
                TiffSamples.of(60, 40, 1, 0, 1).file(),
                TiffSamples.of(60, 40, 8, 3, 1).motorola().file(),
                TiffSamples.of(60, 40, 16, 5, 5)
                        .planar()
                        .field(TiffTag.EXTRA_SAMPLES, 2)
                        .file(),
                WebpSamples.LOSSY,
                WebpSamples.file(
                        WebpSamples.canvas(0x10, 8, 8),
                        WebpSamples.chunk("VP8L", WebpSamples.lossless(8, 8, true, new int[64]))),
                gif());
    }

    @ParameterizedTest
    @MethodSource("sound")
    void cutAnywhereItIsRefused(byte[] whole) throws IOException {
        assertThat(probe(whole)).isInstanceOf(Found.Picture.class);
        for (int i = 0; i < 20; i++) {
            int length = whole.length * i / 20;
            assertThat(probe(Arrays.copyOf(whole, length)))
                    .as("%s bytes", length)
                    .isInstanceOf(Found.Refused.class);
        }
    }

    /** Whatever happens to its bytes, it is a picture or is refused; nothing is thrown, and little is asked for. */
    @ParameterizedTest
    @MethodSource("sound")
    void noBrokenByteStopsTheRun(byte[] whole) throws IOException {
        for (long seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            byte[] broken = whole.clone();
            for (int i = 0; i < 1 + seed % 7; i++) {
                int most = random.nextBoolean() ? Math.min(64, broken.length) : broken.length;
                broken[random.nextBoolean() ? random.nextInt(most) : broken.length - 1 - random.nextInt(most)] =
                        (byte) random.nextInt();
            }
            long before = allocated();
            assertThat(probe(broken)).as("seed %s", seed).isNotNull();
            assertThat((allocated() - before) / MEGABYTE)
                    .as("megabytes, seed %s", seed)
                    .isLessThan(512);
        }
    }
}
