package bandwright.pipeline.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProbeTest {
    @TempDir
    Path folder;

    private Found probe(byte[] content) throws IOException {
        Path file = folder.resolve("heron");
        Files.write(file, content);
        return new Probe("heron", file).found();
    }

    private ArtworkFile picture(byte[] content) throws IOException {
        Found found = probe(content);
        assertThat(found).isInstanceOf(Found.Picture.class);
        return ((Found.Picture) found).artwork();
    }

    private Flaw flaw(byte[] content) throws IOException {
        Found found = probe(content);
        assertThat(found).isInstanceOf(Found.Refused.class);
        return ((Found.Refused) found).flaw();
    }

    @ParameterizedTest
    @CsvSource({"false", "true"})
    void aJpegTellsItsSize(boolean progressive) throws IOException {
        for (int type : new int[] {BufferedImage.TYPE_INT_RGB, BufferedImage.TYPE_BYTE_GRAY}) {
            ArtworkFile artwork = picture(JpegSamples.jpeg(60, 40, type, progressive));
            assertThat(artwork.kind()).isEqualTo(ArtworkFile.Kind.JPEG);
            assertThat(artwork.pixelWidth()).isEqualTo(60);
            assertThat(artwork.pixelHeight()).isEqualTo(40);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0", "2, 0", "4, 0", "8, 0", "16, 0", "8, 2", "16, 2", "1, 3", "2, 3", "4, 3", "8, 3", "8, 4", "16, 4",
        "8, 6", "16, 6"
    })
    void everyKindOfPngTellsItsSize(int bits, int colour) throws IOException {
        for (PngSamples png :
                new PngSamples[] {PngSamples.of(13, 9, bits, colour), PngSamples.interlaced(13, 9, bits, colour)}) {
            ArtworkFile artwork = picture((colour == 3 ? png.palette() : png).file());
            assertThat(artwork.kind()).isEqualTo(ArtworkFile.Kind.PNG);
            assertThat(artwork.pixelWidth()).isEqualTo(13);
            assertThat(artwork.pixelHeight()).isEqualTo(9);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void theOrientationTagIsRead(int tag) throws IOException {
        byte[] jpeg = JpegSamples.rgb(60, 40);
        for (boolean littleEndian : new boolean[] {false, true}) {
            byte[] exif = JpegSamples.exif(tag, littleEndian);
            ArtworkFile artwork = picture(JpegSamples.with(jpeg, 0xE1, exif));
            assertThat(artwork.orientation()).isEqualTo(Orientation.ofTag(tag));
            assertThat(artwork.shownWidth()).isEqualTo(tag < 5 ? 60 : 40);
            byte[] tiff = Arrays.copyOfRange(exif, 6, exif.length);
            assertThat(picture(PngSamples.of(4, 3, 8, 2).chunk("eXIf", tiff).file())
                            .orientation())
                    .isEqualTo(Orientation.ofTag(tag));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void theOrientationTagOfATiffAndAWebpIsRead(int tag) throws IOException {
        for (TiffSamples tiff : List.of(
                TiffSamples.of(60, 40, 8, 2, 3), TiffSamples.of(60, 40, 8, 2, 3).motorola())) {
            ArtworkFile artwork = picture(tiff.field(TiffTag.ORIENTATION, tag).file());
            assertThat(artwork.kind()).isEqualTo(ArtworkFile.Kind.TIFF);
            assertThat(artwork.orientation()).isEqualTo(Orientation.ofTag(tag));
            assertThat(artwork.shownWidth()).isEqualTo(tag < 5 ? 60 : 40);
        }
        byte[] exif = JpegSamples.exif(tag, true);
        for (byte[] block : new byte[][] {exif, Arrays.copyOfRange(exif, 6, exif.length)}) {
            ArtworkFile artwork = picture(WebpSamples.file(
                    WebpSamples.canvas(0x08, 4, 3),
                    WebpSamples.chunk("VP8L", WebpSamples.lossless(4, 3, false, new int[12])),
                    WebpSamples.chunk("EXIF", block)));
            assertThat(artwork.kind()).isEqualTo(ArtworkFile.Kind.WEBP);
            assertThat(artwork.orientation()).isEqualTo(Orientation.ofTag(tag));
        }
    }

    @Test
    void aJpegOfFourInksIsAPicture() throws IOException {
        byte[] jpeg = JpegSamples.rgb(16, 16);
        int frame = find(jpeg, 0xC0);
        ByteArrayOutputStream cmyk = new ByteArrayOutputStream();
        cmyk.write(jpeg, 0, frame + 2);
        cmyk.writeBytes(new byte[] {0, 20, 8, 0, 16, 0, 16, 4, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0, 4, 0x11, 0});
        cmyk.write(jpeg, frame + 19, jpeg.length - frame - 19);
        assertThat(picture(cmyk.toByteArray()).pixelWidth()).isEqualTo(16);
    }

    private static int find(byte[] jpeg, int marker) {
        int at = 2;
        while ((jpeg[at + 1] & 0xFF) != marker) {
            at += 2 + (((jpeg[at + 2] & 0xFF) << 8) | (jpeg[at + 3] & 0xFF));
        }
        return at;
    }

    @Test
    void aPictureCutAnywhereIsRefused() throws IOException {
        byte[] withThumbnail = JpegSamples.with(JpegSamples.rgb(200, 100), 0xEC, JpegSamples.rgb(16, 16));
        for (byte[] whole : new byte[][] {
            JpegSamples.rgb(200, 100),
            withThumbnail,
            PngSamples.of(60, 40, 8, 6).file(),
            PngSamples.of(60, 40, 8, 2).file()
        }) {
            for (int i = 0; i <= 20; i++) {
                int length = Math.max(1, (whole.length - 1) * i / 20);
                Found cut = probe(Arrays.copyOf(whole, length));
                assertThat(cut).as("%s of %s bytes", length, whole.length).isInstanceOf(Found.Refused.class);
                // A download that reserves its space ends in zeros.
                byte[] zeros = Arrays.copyOf(Arrays.copyOf(whole, length), whole.length + 100);
                assertThat(probe(zeros)).as("%s, then zeros", length).isInstanceOf(Found.Refused.class);
            }
        }
    }

    @Test
    void whatStandsBehindTheEndOfAJpegIsNoFault() throws IOException {
        byte[] jpeg = JpegSamples.rgb(60, 40);
        ByteArrayOutputStream more = new ByteArrayOutputStream();
        more.writeBytes(jpeg);
        more.writeBytes("a note by some program".getBytes(StandardCharsets.US_ASCII));
        assertThat(picture(more.toByteArray()).pixelWidth()).isEqualTo(60);
        assertThat(picture(Arrays.copyOf(jpeg, jpeg.length + 500)).pixelWidth()).isEqualTo(60);
    }

    @Test
    void bombsAndEmptyPicturesAreRefusedByTheirHeader() throws IOException {
        assertThat(flaw(PngSamples.headerOnly(50_000, 50_000))).isEqualTo(Flaw.TOO_MANY_PIXELS);
        assertThat(flaw(PngSamples.headerOnly(1, 250_000_000))).isEqualTo(Flaw.TOO_MANY_PIXELS);
        assertThat(flaw(PngSamples.headerOnly(0, 10))).isEqualTo(Flaw.NO_PIXELS);
        assertThat(flaw(PngSamples.headerOnly(10, 0))).isEqualTo(Flaw.NO_PIXELS);
        assertThat(flaw(PngSamples.headerOnly(10_000, 10_000))).isEqualTo(Flaw.CUT_SHORT);
        byte[] jpeg = JpegSamples.rgb(16, 16);
        int frame = find(jpeg, 0xC0);
        byte[] flat = jpeg.clone();
        flat[frame + 6] = 0;
        assertThat(flaw(flat)).isEqualTo(Flaw.NO_PIXELS);
        byte[] huge = jpeg.clone();
        Arrays.fill(huge, frame + 5, frame + 9, (byte) 0xF0);
        assertThat(flaw(huge)).isEqualTo(Flaw.TOO_MANY_PIXELS);
        byte[] arithmetic = jpeg.clone();
        arithmetic[frame + 1] = (byte) 0xC9;
        assertThat(flaw(arithmetic)).isEqualTo(Flaw.RARE_JPEG);
    }

    @Test
    void aWrongCheckSumIsRefusedInPixelsAndForgivenInANote() throws IOException {
        byte[] png = PngSamples.of(20, 10, 8, 2).file();
        png[png.length - 20] ^= 1;
        assertThat(flaw(png)).isEqualTo(Flaw.DAMAGED);
        byte[] noted = PngSamples.of(20, 10, 8, 2).chunk("tEXt", new byte[10]).file();
        noted[45] ^= 1;
        assertThat(picture(noted).pixelWidth()).isEqualTo(20);
    }

    @Test
    void soundChunksWithBrokenOrShortPixelsAreRefused() throws IOException {
        byte[] rows = new byte[10 * (1 + 20 * 3)];
        byte[] short1 = PngSamples.deflated(Arrays.copyOf(rows, rows.length - 1));
        assertThat(flaw(PngSamples.of(20, 10, 8, 2).fileOf(short1))).isEqualTo(Flaw.CUT_SHORT);
        byte[] broken = PngSamples.of(20, 10, 8, 2).packed();
        broken[broken.length / 2] ^= 0x55;
        broken[broken.length / 2 + 1] ^= 0x55;
        assertThat(probe(PngSamples.of(20, 10, 8, 2).fileOf(broken))).isInstanceOf(Found.Refused.class);
        rows[3 * 61] = 7; // a filter that PNG hasn't
        assertThat(flaw(PngSamples.of(20, 10, 8, 2).fileOf(PngSamples.deflated(rows))))
                .isEqualTo(Flaw.DAMAGED);
        rows[3 * 61] = 0;
        assertThat(picture(PngSamples.of(20, 10, 8, 2).fileOf(PngSamples.deflated(rows)))
                        .pixelHeight())
                .isEqualTo(10);
    }

    @Test
    void rubbishIsNoPicture() throws IOException {
        assertThat(flaw(new byte[0])).isEqualTo(Flaw.CUT_SHORT);
        assertThat(flaw("a letter from the choir".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(Flaw.UNKNOWN_KIND);
    }

    @Test
    void noFileHoweverBrokenStopsTheRun() throws IOException {
        byte[] exif = JpegSamples.with(JpegSamples.rgb(40, 30), 0xE1, JpegSamples.exif(6, true));
        byte[] tagged = PngSamples.of(20, 10, 8, 3)
                .palette()
                .chunk("tRNS", new byte[20])
                .chunk("gAMA", new byte[4])
                .chunk("eXIf", Arrays.copyOfRange(JpegSamples.exif(6, false), 6, 32))
                .file();
        for (long seed = 0; seed < 2_000; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            byte[] broken = (seed % 2 == 0 ? exif : tagged).clone();
            for (int i = 0; i < 1 + seed % 7; i++) {
                broken[random.nextInt(random.nextBoolean() ? 300 : broken.length)] = (byte) random.nextInt();
            }
            byte[] cut = Arrays.copyOf(broken, seed % 5 == 0 ? random.nextInt(broken.length) : broken.length);
            assertThat(probe(cut)).as("seed %s", seed).isNotNull();
        }
    }

    @Test
    void theSamplesAreSound() throws IOException {
        for (int colour : new int[] {0, 2, 4, 6}) {
            Path file = folder.resolve("sample.png");
            Files.write(file, PngSamples.interlaced(13, 9, 8, colour).file());
            assertThat(ImageIO.read(file.toFile()).getWidth()).isEqualTo(13);
        }
    }
}
