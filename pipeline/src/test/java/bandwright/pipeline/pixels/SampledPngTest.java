package bandwright.pipeline.pixels;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pixel for pixel what the JDK's own reader takes. */
final class SampledPngTest {
    private static final int GREY = 0;
    private static final int RGB = 2;
    private static final int RGB_ALPHA = 6;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"2, 61, 43, 1", "2, 61, 43, 4", "6, 61, 43, 1", "6, 60, 44, 3", "6, 5, 3, 3", "6, 1, 1, 1"})
    void itTakesThePixelsThatTheJdkTakes(int colour, int width, int height, int step) throws IOException {
        byte[] png = png(colour, width, height, 11L * width + step);
        Path file = Files.write(folder.resolve("noise.png"), png);

        BufferedImage seen = SampledPng.find(file, step).orElseThrow();

        BufferedImage wanted = byJdk(png, step);
        assertThat(seen.getWidth()).isEqualTo(wanted.getWidth());
        assertThat(seen.getHeight()).isEqualTo(wanted.getHeight());
        assertThat(rgb(seen)).isEqualTo(rgb(wanted));
    }

    @Test
    void otherKindsAreLeftToTheJdk() throws IOException {
        Path file = Files.write(folder.resolve("grey.png"), png(GREY, 20, 10, 3));

        assertThat(SampledPng.find(file, 2)).isEqualTo(Optional.empty());
    }

    /** Random bytes under every filter in turn (ISO/IEC 15948, 9.2): each row means something else by its filter. */
    private static byte[] png(int colour, int width, int height, long seed) throws IOException {
        int channels = colour == GREY ? 1 : colour == RGB ? 3 : 4;
        assertThat(colour).isIn(GREY, RGB, RGB_ALPHA);
        SplittableRandom random = new SplittableRandom(seed);
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream rows = new DeflaterOutputStream(packed)) {
            for (int y = 0; y < height; y++) {
                byte[] row = new byte[1 + width * channels];
                for (int i = 1; i < row.length; i++) {
                    // Few values, so that neighbours are often alike.
                    row[i] = (byte) (random.nextInt(4) * (y % 3 == 0 ? 1 : 60));
                }
                row[0] = (byte) ((y + 4) % 5);
                rows.write(row);
            }
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        ByteArrayOutputStream header = new ByteArrayOutputStream();
        number(header, width);
        number(header, height);
        header.writeBytes(new byte[] {8, (byte) colour, 0, 0, 0});
        chunk(png, "IHDR", header.toByteArray());
        chunk(png, "IDAT", packed.toByteArray());
        chunk(png, "IEND", new byte[0]);
        return png.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream png, String name, byte[] content) {
        ByteArrayOutputStream named = new ByteArrayOutputStream();
        named.writeBytes(name.getBytes(StandardCharsets.US_ASCII));
        named.writeBytes(content);
        CRC32 crc = new CRC32();
        crc.update(named.toByteArray());
        number(png, content.length);
        png.writeBytes(named.toByteArray());
        number(png, (int) crc.getValue());
    }

    private static void number(ByteArrayOutputStream out, int number) {
        out.writeBytes(ByteBuffer.allocate(4).putInt(number).array());
    }

    private static BufferedImage byJdk(byte[] png, int step) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        reader.setInput(new MemoryCacheImageInputStream(new ByteArrayInputStream(png)), true, true);
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(step, step, step / 2, step / 2);
        return reader.read(0, param);
    }

    private static int[] rgb(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
}
