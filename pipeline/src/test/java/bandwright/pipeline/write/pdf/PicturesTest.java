package bandwright.pipeline.write.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Found;
import bandwright.pipeline.artwork.JpegSamples;
import bandwright.pipeline.artwork.PngSamples;
import bandwright.pipeline.pixels.SrgbProfile;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PicturesTest {
    @TempDir
    Path home;

    @BeforeEach
    void folders() throws IOException {
        ImageIO.setUseCache(false);
        Files.createDirectories(home.resolve("artwork"));
        Files.createDirectories(home.resolve("scratch"));
    }

    private void put(String name, byte[] content) throws IOException {
        Files.write(home.resolve("artwork").resolve(name), content);
    }

    /** One page a file of the artwork folder. */
    private byte[] document() throws IOException {
        ArtworkShelf shelf = ArtworkShelf.open(home.resolve("artwork"));
        List<ArtworkFile> all = new ArrayList<>();
        for (String name : shelf.list()) {
            Found found = shelf.find(name);
            assertThat(found).as(name).isInstanceOf(Found.Picture.class);
            all.add(((Found.Picture) found).artwork());
        }
        PreparedPictures prepared = new PreparedPictures(home.resolve("scratch"));
        prepared.ahead(all, List.of(), Optional.empty());
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(1L);
            Pictures pictures = new Pictures(document, prepared, Optional.empty());
            for (ArtworkFile artwork : all) {
                PDPage page = new PDPage();
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    content.drawImage((PDImageXObject) pictures.of(artwork), 0, 0, 200, 100);
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private static PDImageXObject image(PDDocument document, int page) throws IOException {
        var resources = document.getPage(page).getResources();
        return (PDImageXObject)
                resources.getXObject(resources.getXObjectNames().iterator().next());
    }

    private static byte[] raw(PDImageXObject image) throws IOException {
        try (InputStream in = image.getCOSObject().createRawInputStream()) {
            return in.readAllBytes();
        }
    }

    @Test
    void aJpegGoesInByteForByte() throws IOException {
        byte[] colour = JpegSamples.rgb(60, 40);
        byte[] grey = JpegSamples.jpeg(60, 40, BufferedImage.TYPE_BYTE_GRAY, true);
        put("a.jpg", colour);
        put("b.jpg", grey);
        try (PDDocument document = Loader.loadPDF(document())) {
            assertThat(raw(image(document, 0))).isEqualTo(colour);
            assertThat(raw(image(document, 1))).isEqualTo(grey);
            assertThat(image(document, 0).getColorSpace().getName()).isEqualTo("ICCBased");
            assertThat(image(document, 1).getColorSpace().getName()).isEqualTo("DeviceGray");
            samePixels(image(document, 0).getImage(), ImageIO.read(new ByteArrayInputStream(colour)), 2);
        }
    }

    @Test
    void aProfileInAJpegIsKeptAndADoubtfulOneLeftOut() throws IOException {
        byte[] own = SrgbProfile.bytes();
        own[24] = 99; // another date: not the shared profile
        ByteArrayOutputStream segment = new ByteArrayOutputStream();
        segment.writeBytes("ICC_PROFILE\0\1\1".getBytes(StandardCharsets.ISO_8859_1));
        segment.writeBytes(own);
        put("a.jpg", JpegSamples.with(JpegSamples.rgb(60, 40), 0xE2, segment.toByteArray()));
        byte[] broken = segment.toByteArray();
        broken[14 + 16] = 'C';
        put("b.jpg", JpegSamples.with(JpegSamples.rgb(60, 40), 0xE2, broken));
        try (PDDocument document = Loader.loadPDF(document())) {
            assertThat(profile(image(document, 0))).isEqualTo(own);
            assertThat(profile(image(document, 1))).isEqualTo(SrgbProfile.bytes());
        }
    }

    private static byte[] profile(PDImageXObject image) throws IOException {
        COSArray space = (COSArray) image.getCOSObject().getDictionaryObject(COSName.COLORSPACE);
        try (InputStream in = ((COSStream) space.getObject(1)).createInputStream()) {
            return in.readAllBytes();
        }
    }

    /** Plain kinds pass through; alpha is parted and interlacing laid together. Pixels are the same in every case. */
    @ParameterizedTest
    @CsvSource({
        "1, 0, true",
        "2, 0, true",
        "4, 0, true",
        "8, 0, true",
        "16, 0, true",
        "8, 2, true",
        "16, 2, true",
        "1, 3, true",
        "2, 3, true",
        "4, 3, true",
        "8, 3, true",
        "8, 4, false",
        "16, 4, false",
        "8, 6, false",
        "16, 6, false"
    })
    void everyKindOfPngIsTheSamePicture(int bits, int colour, boolean passes) throws IOException {
        PngSamples plain = PngSamples.of(37, 23, bits, colour);
        byte[] packed = plain.packed();
        byte[] first = (colour == 3 ? plain.palette() : plain).file();
        PngSamples laced = PngSamples.interlaced(37, 23, bits, colour);
        put("a.png", first);
        put("b.png", (colour == 3 ? laced.palette() : laced).file());
        try (PDDocument document = Loader.loadPDF(document())) {
            assertThat(Arrays.equals(raw(image(document, 0)), packed)).isEqualTo(passes);
            for (int page = 0; page < 2; page++) {
                PDImageXObject image = image(document, page);
                BufferedImage wanted = ImageIO.read(new ByteArrayInputStream(first));
                assertSamples(image, wanted, bits, colour);
            }
        }
    }

    /** Compares the samples themselves, before any colour space. */
    private static void assertSamples(PDImageXObject image, BufferedImage wanted, int bits, int colour)
            throws IOException {
        Raster raster = wanted.getRaster();
        int colours = colour == 2 || colour == 6 ? 3 : 1;
        byte[] samples;
        try (InputStream in = image.getCOSObject().createInputStream()) {
            samples = in.readAllBytes();
        }
        compare(samples, raster, bits, colours, 0);
        PDImageXObject mask = image.getSoftMask();
        assertThat(mask != null).isEqualTo(colour >= 4);
        if (mask != null) {
            try (InputStream in = mask.getCOSObject().createInputStream()) {
                compare(in.readAllBytes(), raster, bits, 1, colours);
            }
        }
    }

    private static void compare(byte[] samples, Raster raster, int bits, int channels, int band) {
        int rowBits = (raster.getWidth() * channels * bits + 7) / 8 * 8;
        for (int y = 0; y < raster.getHeight(); y++) {
            for (int i = 0; i < raster.getWidth() * channels; i++) {
                int value = 0;
                for (int b = y * rowBits + i * bits; b < y * rowBits + (i + 1) * bits; b++) {
                    value = (value << 1) | ((samples[b / 8] >> (7 - b % 8)) & 1);
                }
                assertThat(value).as("row %s", y).isEqualTo(raster.getSample(i / channels, y, band + i % channels));
            }
        }
    }

    private static void samePixels(BufferedImage seen, BufferedImage wanted, int most) {
        for (int y = 0; y < wanted.getHeight(); y++) {
            for (int x = 0; x < wanted.getWidth(); x++) {
                for (int shift = 0; shift < 32; shift += 8) {
                    int off = (seen.getRGB(x, y) >> shift & 255) - (wanted.getRGB(x, y) >> shift & 255);
                    assertThat(Math.abs(off)).as("%s, %s", x, y).isLessThanOrEqualTo(most);
                }
            }
        }
    }

    @Test
    void alphaThatHidesNothingIsLeftOut() throws IOException {
        put("a.png", PngSamples.of(37, 23, 8, 6).opaque().file());
        put("b.png", PngSamples.of(37, 23, 16, 4).opaque().file());
        try (PDDocument document = Loader.loadPDF(document())) {
            assertThat(image(document, 0).getSoftMask()).isNull();
            assertThat(image(document, 1).getSoftMask()).isNull();
        }
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "4", "8"})
    void aPaletteWithTransparentColoursGetsAMask(int bits) throws IOException {
        byte[] half = {0, (byte) 128, -1};
        byte[] file = PngSamples.of(37, 23, bits, 3)
                .palette()
                .chunk("tRNS", bits == 1 ? new byte[] {0} : half)
                .file();
        put("a.png", file);
        try (PDDocument document = Loader.loadPDF(document())) {
            assertThat(image(document, 0).getSoftMask().getBitsPerComponent()).isEqualTo(bits == 1 ? 1 : 8);
            samePixels(image(document, 0).getImage(), ImageIO.read(new ByteArrayInputStream(file)), 1);
        }
    }

    @Test
    void oneColourThatIsNotPaintedBecomesAKeyOrAMask() throws IOException {
        put(
                "a.png",
                PngSamples.of(37, 23, 8, 2)
                        .chunk("tRNS", (byte) 0, (byte) 7, (byte) 0, (byte) 8, (byte) 0, (byte) 9)
                        .file());
        put(
                "b.png",
                PngSamples.of(37, 23, 16, 0).chunk("tRNS", (byte) 3, (byte) 7).file());
        try (PDDocument document = Loader.loadPDF(document())) {
            COSBase key = image(document, 0).getCOSObject().getDictionaryObject(COSName.MASK);
            assertThat(((COSArray) key).toCOSNumberIntegerList()).containsExactly(7, 7, 8, 8, 9, 9);
            assertThat(image(document, 1).getSoftMask().getBitsPerComponent()).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @CsvSource({"45455, true, ICCBased", "45000, false, CalRGB", "100000, false, CalRGB", "0, true, ICCBased"})
    void gammaAndPrimariesAreKept(int gamma, boolean srgb, String space) throws IOException {
        byte[] chunk = ByteBuffer.allocate(4).putInt(gamma).array();
        put("a.png", PngSamples.of(37, 23, 8, 2).chunk("gAMA", chunk).file());
        try (PDDocument document = Loader.loadPDF(document())) {
            assertThat(image(document, 0).getColorSpace().getName()).isEqualTo(space);
            assertThat(srgb).isEqualTo(space.equals("ICCBased"));
        }
    }

    @Test
    void twoNamesWithTheSameBytesAreStoredOnce() throws IOException {
        put("a.jpg", JpegSamples.rgb(60, 40));
        put("b.jpg", JpegSamples.rgb(60, 40));
        put("c.jpg", JpegSamples.rgb(61, 40));
        try (PDDocument document = Loader.loadPDF(document())) {
            assertThat(new TreeSet<>(List.of(number(document, 0), number(document, 1), number(document, 2))))
                    .hasSize(2);
            assertThat(number(document, 0)).isEqualTo(number(document, 1));
        }
    }

    private static long number(PDDocument document, int page) throws IOException {
        return image(document, page).getCOSObject().getKey().getNumber();
    }

    @Test
    void theSamePicturesGiveTheSameBytes() throws IOException {
        put("a.png", PngSamples.of(37, 23, 8, 6).file());
        put("b.png", PngSamples.interlaced(37, 23, 8, 2).file());
        put("c.jpg", JpegSamples.rgb(60, 40));
        assertThat(document()).isEqualTo(document());
    }
}
