package bandwright.pipeline.write.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Found;
import bandwright.pipeline.artwork.JpegSamples;
import bandwright.pipeline.pixels.StoredPixels;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A JPEG of four inks goes in byte for byte; whether 255 is all ink or none is what its Adobe segment says. */
class InkedJpegTest {
    private static final int[] INKS = {200, 40, 90, 30};
    private static final int ADOBE = 0xEE;
    private static final int PROFILE = 0xE2;

    @TempDir
    Path home;

    private PDDocument document;

    @BeforeEach
    void folders() throws IOException {
        ImageIO.setUseCache(false);
        Files.createDirectories(home.resolve("artwork"));
        document = new PDDocument();
    }

    private ArtworkFile artwork(byte[] file) throws IOException {
        Files.write(home.resolve("artwork/tern.jpg"), file);
        return ((Found.Picture) ArtworkShelf.open(home.resolve("artwork")).find("tern.jpg")).artwork();
    }

    private PDImageXObject stored(ArtworkFile artwork) throws IOException {
        PreparedPictures prepared = new PreparedPictures(home);
        return (PDImageXObject) new Pictures(document, prepared, Optional.empty()).of(artwork);
    }

    /** A flat colour, its four numbers as they are stored. */
    private static byte[] jpeg(int... stored) throws IOException {
        WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 32, 16, 4, null);
        for (int i = 0; i < 32 * 16; i++) {
            raster.setPixel(i % 32, i / 32, stored);
        }
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionQuality(1);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(raster, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    /** @param transform 0 = inks as they are, 2 = luma, chroma and black */
    private static byte[] adobe(byte[] jpeg, int transform) {
        byte[] content = {'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, (byte) transform};
        return JpegSamples.with(jpeg, ADOBE, content);
    }

    private static byte[] plain() throws IOException {
        return jpeg(INKS);
    }

    private static byte[] inverted() throws IOException {
        return adobe(jpeg(255 - INKS[0], 255 - INKS[1], 255 - INKS[2], 255 - INKS[3]), 0);
    }

    /** Of inverted inks: luma and chroma of what they leave, which is red, green, blue of 200, 40, 90. */
    private static byte[] transformed() throws IOException {
        double luma = 0.299 * INKS[0] + 0.587 * INKS[1] + 0.114 * INKS[2];
        int blue = (int) Math.round(128 + (INKS[2] - luma) / 1.772);
        int red = (int) Math.round(128 + (INKS[0] - luma) / 1.402);
        return adobe(jpeg((int) Math.round(luma), blue, red, 255 - INKS[3]), 2);
    }

    private static byte[] made(String kind) throws IOException {
        return switch (kind) {
            case "plain" -> plain();
            case "inverted" -> inverted();
            default -> transformed();
        };
    }

    @ParameterizedTest
    @CsvSource({"plain, false", "inverted, true", "transformed, true"})
    void itsBytesAreTheFilesAndOnlyAnAdobeSegmentInvertsThem(String kind, boolean inverts) throws IOException {
        byte[] file = made(kind);
        PDImageXObject image = stored(artwork(file));
        try (InputStream in = image.getCOSObject().createRawInputStream()) {
            assertThat(in.readAllBytes()).isEqualTo(file);
        }
        assertThat(image.getColorSpace()).isInstanceOf(PDDeviceCMYK.class);
        COSBase decode = image.getCOSObject().getDictionaryObject(COSName.DECODE);
        assertThat(decode != null).isEqualTo(inverts);
        if (decode != null) {
            assertThat(((COSArray) decode).toCOSNumberIntegerList()).containsExactly(1, 0, 1, 0, 1, 0, 1, 0);
        }
    }

    @ParameterizedTest
    @CsvSource({"plain", "inverted", "transformed"})
    void theThreeWaysOfStoringOneColourLookAlikeInTheDocumentAndToUs(String kind) throws IOException {
        // What the library's own device space makes of these inks, without any JPEG.
        float[] inks = {INKS[0] / 255f, INKS[1] / 255f, INKS[2] / 255f, INKS[3] / 255f};
        float[] wanted = PDDeviceCMYK.INSTANCE.toRGB(inks);
        ArtworkFile artwork = artwork(made(kind));
        BufferedImage drawn = stored(artwork).getImage();
        StoredPixels seen = StoredPixels.read(artwork, 1);
        for (int c = 0; c < 3; c++) {
            int shift = 16 - 8 * c;
            if (!kind.equals("transformed")) { // of those the library's own reading is checked by eye only
                assertThat(drawn.getRGB(16, 8) >> shift & 255).isCloseTo(Math.round(wanted[c] * 255), within(4));
            }
            assertThat(seen.at(8 * 32 + 16) >> shift & 255).isCloseTo(Math.round(wanted[c] * 255), within(4));
        }
    }

    private static org.assertj.core.data.Offset<Integer> within(int most) {
        return org.assertj.core.api.Assertions.within(most);
    }

    @Test
    void aProfileOfItsInksIsKept() throws IOException {
        byte[] icc;
        try (InputStream in = PDDeviceCMYK.class.getResourceAsStream(
                "/org/apache/pdfbox/resources/icc/CGATS001Compat-v2-micro.icc")) {
            icc = in.readAllBytes();
        }
        byte[] file = plain();
        int parts = (icc.length + 59_999) / 60_000;
        for (int part = parts; part >= 1; part--) {
            ByteArrayOutputStream segment = new ByteArrayOutputStream();
            segment.writeBytes("ICC_PROFILE\0".getBytes(StandardCharsets.ISO_8859_1));
            segment.write(part);
            segment.write(parts);
            int at = (part - 1) * 60_000;
            segment.write(icc, at, Math.min(60_000, icc.length - at));
            file = JpegSamples.with(file, PROFILE, segment.toByteArray());
        }
        PDImageXObject image = stored(artwork(file));
        COSArray space = (COSArray) image.getCOSObject().getDictionaryObject(COSName.COLORSPACE);
        COSStream stream = (COSStream) space.getObject(1);
        assertThat(stream.getInt(COSName.N)).isEqualTo(4);
        try (InputStream in = stream.createInputStream()) {
            assertThat(in.readAllBytes()).isEqualTo(icc);
        }
        assertThat(List.of(space.getObject(0))).containsExactly(COSName.ICCBASED);
    }
}
