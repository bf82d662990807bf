package bandwright.pipeline.write.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Found;
import bandwright.pipeline.artwork.TiffSamples;
import bandwright.pipeline.artwork.WebpSamples;
import bandwright.pipeline.pixels.SrgbProfile;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a document has of a TIFF, WebP or GIF: sample by sample what its file has. */
class UnpackedPictureTest {
    private static final int EXTRA_SAMPLES = 338;

    @TempDir
    Path home;

    private PDDocument document;

    @BeforeEach
    void folders() throws IOException {
        ImageIO.setUseCache(false);
        Files.createDirectories(home.resolve("artwork"));
        Files.createDirectories(home.resolve("scratch"));
        document = new PDDocument();
    }

    private PDImageXObject stored(byte[] file) throws IOException {
        Files.write(home.resolve("artwork/heron"), file);
        Found found = ArtworkShelf.open(home.resolve("artwork")).find("heron");
        assertThat(found).isInstanceOf(Found.Picture.class);
        ArtworkFile artwork = ((Found.Picture) found).artwork();
        PreparedPictures prepared = new PreparedPictures(home.resolve("scratch"));
        prepared.ahead(List.of(artwork), List.of(), Optional.empty());
        return (PDImageXObject) new Pictures(document, prepared, Optional.empty()).of(artwork);
    }

    private static byte[] samples(COSStream stream) throws IOException {
        try (InputStream in = stream.createInputStream()) {
            return in.readAllBytes();
        }
    }

    /** A sample out of rows that begin at whole bytes. */
    private static int sample(byte[] samples, int rowSamples, int bits, int y, int i) {
        long rowBits = (long) (rowSamples * bits + 7) / 8 * 8;
        int value = 0;
        for (long b = y * rowBits + (long) i * bits; b < y * rowBits + (i + 1L) * bits; b++) {
            value = (value << 1) | ((samples[(int) (b / 8)] >> (7 - (b % 8))) & 1);
        }
        return value;
    }

    private static void assertSamples(PDImageXObject image, TiffSamples tiff, int bits, int colours, boolean inverted)
            throws IOException {
        byte[] samples = samples(image.getCOSObject());
        int most = (1 << bits) - 1;
        for (int y = 0; y < 23; y++) {
            for (int i = 0; i < 37 * colours; i++) {
                int wanted = tiff.value(i / colours, y, i % colours);
                assertThat(sample(samples, 37 * colours, bits, y, i))
                        .as("row %s, sample %s", y, i)
                        .isEqualTo(inverted ? most - wanted : wanted);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0, 1, DeviceGray",
        "4, 0, 1, DeviceGray",
        "8, 0, 1, DeviceGray",
        "16, 0, 1, DeviceGray",
        "1, 1, 1, DeviceGray",
        "2, 1, 1, DeviceGray",
        "4, 1, 1, DeviceGray",
        "8, 1, 1, DeviceGray",
        "16, 1, 1, DeviceGray",
        "8, 2, 3, ICCBased",
        "16, 2, 3, ICCBased",
        "1, 3, 1, Indexed",
        "4, 3, 1, Indexed",
        "8, 3, 1, Indexed",
        "8, 5, 4, DeviceCMYK",
        "16, 5, 4, DeviceCMYK"
    })
    void everyKindOfTiffKeepsItsSamples(int bits, int colour, int samples, String space) throws IOException {
        for (TiffSamples tiff : List.of(
                TiffSamples.of(37, 23, bits, colour, samples),
                TiffSamples.of(37, 23, bits, colour, samples).motorola(),
                TiffSamples.of(37, 23, bits, colour, samples).deflated().inOneStrip(),
                TiffSamples.of(37, 23, bits, colour, samples).tiled(16))) {
            PDImageXObject image = stored(tiff.file());
            assertThat(image.getColorSpace().getName()).isEqualTo(space);
            assertThat(image.getBitsPerComponent()).isEqualTo(bits);
            assertThat(image.getSoftMask()).isNull();
            assertSamples(image, tiff, bits, samples, colour == 0);
        }
    }

    @ParameterizedTest
    @CsvSource({"8, 1, 1", "8, 2, 3", "16, 2, 3", "8, 5, 4"})
    void aTiffInPlanesKeepsItsSamples(int bits, int colour, int samples) throws IOException {
        TiffSamples tiff = TiffSamples.of(37, 23, bits, colour, samples).planar();
        assertSamples(stored(tiff.file()), tiff, bits, samples, false);
    }

    @ParameterizedTest
    @CsvSource({"8, 1, 1", "16, 1, 1", "8, 2, 3", "16, 2, 3", "8, 5, 4"})
    void alphaBecomesAMaskAndTheColoursStayAsTheyAre(int bits, int colour, int colours) throws IOException {
        TiffSamples tiff = TiffSamples.of(37, 23, bits, colour, colours + 1).field(EXTRA_SAMPLES, 2);
        PDImageXObject image = stored(tiff.file());
        assertSamples(image, tiff, bits, colours, false);
        byte[] mask = samples(image.getSoftMask().getCOSObject());
        for (int i = 0; i < 37 * 23; i++) {
            assertThat(sample(mask, 37, bits, i / 37, i % 37)).isEqualTo(tiff.value(i % 37, i / 37, colours));
        }
    }

    @Test
    void coloursThatWereMultipliedByAlphaAreDivided() throws IOException {
        TiffSamples tiff = TiffSamples.of(37, 23, 8, 2, 4).field(EXTRA_SAMPLES, 1);
        int[] amber = {100, 60, 20, 128};
        int[] clear = {0, 0, 0, 0};
        for (int c = 0; c < 4; c++) {
            tiff.set(0, 0, c, amber[c]).set(1, 0, c, clear[c]);
        }
        byte[] samples = samples(stored(tiff.file()).getCOSObject());
        assertThat(List.of(samples[0] & 255, samples[1] & 255, samples[2] & 255))
                .containsExactly(199, 120, 40);
        assertThat(List.of(samples[3], samples[4], samples[5])).containsOnly((byte) 0);
    }

    @Test
    void samplesThatNobodyKnowsAreLeftOut() throws IOException {
        TiffSamples tiff = TiffSamples.of(37, 23, 8, 2, 5).field(EXTRA_SAMPLES, 0, 0);
        PDImageXObject image = stored(tiff.file());
        assertSamples(image, tiff, 8, 3, false);
        assertThat(image.getSoftMask()).isNull();
    }

    @Test
    void aPaletteOfATiffIsKept() throws IOException {
        TiffSamples tiff = TiffSamples.of(37, 23, 4, 3, 1);
        long[] colours = new long[48];
        colours[3] = 0xFFFF; // the fourth red
        colours[16 + 3] = 0x80FF;
        COSArray space = (COSArray)
                stored(tiff.field(320, colours).file()).getCOSObject().getDictionaryObject(COSName.COLORSPACE);
        byte[] palette = ((COSString) space.getObject(3)).getBytes();
        assertThat(palette).hasSize(48);
        assertThat(List.of(palette[9], palette[10], palette[11])).containsExactly((byte) 255, (byte) 128, (byte) 0);
    }

    @Test
    void aProfileOfATiffOrAWebpIsKeptAndOneForOtherColoursLeftOut() throws IOException {
        byte[] own = SrgbProfile.bytes();
        own[24] = 99; // another date: not the shared profile
        int[] pixels = new int[12];
        byte[] webp = WebpSamples.file(
                WebpSamples.canvas(0x20, 4, 3),
                WebpSamples.chunk("ICCP", own),
                WebpSamples.chunk("VP8L", WebpSamples.lossless(4, 3, false, pixels)));
        assertThat(profile(stored(TiffSamples.of(37, 23, 8, 2, 3).profile(own).file())))
                .isEqualTo(own);
        assertThat(profile(stored(webp))).isEqualTo(own);
        PDImageXObject inks =
                stored(TiffSamples.of(37, 23, 8, 5, 4).profile(own).file());
        assertThat(inks.getColorSpace().getName()).isEqualTo("DeviceCMYK");
    }

    private static byte[] profile(PDImageXObject image) throws IOException {
        COSArray space = (COSArray) image.getCOSObject().getDictionaryObject(COSName.COLORSPACE);
        return samples((COSStream) space.getObject(1));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aLosslessWebpKeepsItsSamples(boolean hasAlpha) throws IOException {
        int[] pixels = new SplittableRandom(3).ints(37 * 23).toArray();
        PDImageXObject image =
                stored(WebpSamples.file(WebpSamples.chunk("VP8L", WebpSamples.lossless(37, 23, hasAlpha, pixels))));
        byte[] samples = samples(image.getCOSObject());
        for (int i = 0; i < pixels.length; i++) {
            int seen = ((samples[3 * i] & 255) << 16) | ((samples[3 * i + 1] & 255) << 8) | (samples[3 * i + 2] & 255);
            assertThat(seen).as("pixel %s", i).isEqualTo(pixels[i] & 0xFF_FFFF);
        }
        assertThat(image.getSoftMask() != null).isEqualTo(hasAlpha);
        if (hasAlpha) {
            byte[] mask = samples(image.getSoftMask().getCOSObject());
            for (int i = 0; i < pixels.length; i++) {
                assertThat(mask[i]).isEqualTo((byte) (pixels[i] >>> 24));
            }
        }
    }

    @Test
    void aLossyWebpLooksAsItShould() throws IOException {
        BufferedImage seen = stored(WebpSamples.LOSSY).getImage();
        int[] stripes = {0xFFFFFF, 0x000000, 0xFF0000, 0x00FF00, 0x0000FF, 0x808080, 0xFAFAFA, 0xC87828};
        for (int i = 0; i < stripes.length; i++) {
            for (int shift = 0; shift < 24; shift += 8) {
                int off = (seen.getRGB(4 * i + 2, 8) >> shift & 255) - (stripes[i] >> shift & 255);
                assertThat(Math.abs(off)).as("stripe %s", i).isLessThan(60);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"2, -1, false", "16, 5, false", "200, 199, true", "256, 0, false", "256, -1, true"})
    void aGifKeepsItsColoursAndWhatIsNotPainted(int colours, int transparent, boolean interlaced) throws IOException {
        byte[] file = gif(colours, transparent, interlaced);
        PDImageXObject image = stored(file);
        BufferedImage wanted = ImageIO.read(new ByteArrayInputStream(file)); // Java's own reader
        BufferedImage seen = image.getImage();
        for (int i = 0; i < 37 * 23; i++) {
            int pixel = wanted.getRGB(i % 37, i / 37);
            int shown = seen.getRGB(i % 37, i / 37);
            assertThat(shown >>> 24).as("pixel %s", i).isEqualTo(pixel >>> 24);
            if (pixel >>> 24 != 0) {
                assertThat(shown).as("pixel %s", i).isEqualTo(pixel);
            }
        }
        COSDictionary stored = image.getCOSObject();
        assertThat(stored.containsKey(COSName.MASK)).isEqualTo(transparent >= 0);
    }

    private static byte[] gif(int colours, int transparent, boolean interlaced) throws IOException {
        byte[] table = new byte[3 * colours];
        new SplittableRandom(colours).nextBytes(table);
        int bits = Math.max(1, Integer.numberOfTrailingZeros(Integer.highestOneBit(2 * colours - 1)));
        IndexColorModel model = new IndexColorModel(bits, colours, table, 0, false, transparent);
        BufferedImage image = new BufferedImage(37, 23, BufferedImage.TYPE_BYTE_INDEXED, model);
        int[] numbers = new SplittableRandom(4).ints(37 * 23, 0, colours).toArray();
        image.getRaster().setPixels(0, 0, 37, 23, numbers);
        var writer = ImageIO.getImageWritersByFormatName("gif").next();
        var param = writer.getDefaultWriteParam();
        param.setProgressiveMode(interlaced ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
