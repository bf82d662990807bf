package bandwright.pipeline.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** inbox-sample is what our own code draws and writes; {@code -Dsample.renew} writes it anew and fails that build. */
final class SampleFilesTest {
    private static final Path SAMPLE = Path.of("..", "inbox-sample");

    @Test
    void theSampleIsWhatOurOwnCodeDraws(@TempDir Path fresh) throws IOException {
        if (Boolean.getBoolean("sample.renew")) {
            SampleInbox.write(SAMPLE);
            fail("inbox-sample is written anew: look at it, then build without -Dsample.renew");
        }
        List<String> pictures = SampleInbox.write(fresh);
        assertThat(SAMPLE.resolve("web-shop.csv")).hasSameTextualContentAs(fresh.resolve("web-shop.csv"));
        assertThat(cells(SAMPLE)).hasSizeGreaterThan(20).isEqualTo(cells(fresh));
        try (Stream<Path> kept = Files.list(SAMPLE.resolve("artwork"))) {
            assertThat(kept.map(file -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(pictures);
        }
        for (String picture : pictures) {
            Path path = Path.of("artwork", picture);
            assertThat(difference(SAMPLE.resolve(path), fresh.resolve(path)))
                    .as(picture)
                    .isLessThan(1);
        }
    }

    private static List<String> cells(Path inbox) throws IOException {
        List<String> rows = new ArrayList<>();
        try (Workbook book =
                WorkbookFactory.create(inbox.resolve("weekend-orders.xlsx").toFile(), null, true)) {
            for (Row row : book.getSheet("Orders")) {
                List<String> cells = new ArrayList<>();
                row.forEach(cell -> cells.add(cell.toString()));
                rows.add(String.join(" | ", cells));
            }
        }
        return rows;
    }

    /** Mean difference of the channels, 0 to 255; different sizes differ wholly. */
    private static double difference(Path one, Path other) throws IOException {
        assertThat(Files.size(one)).isPositive();
        BufferedImage a = ImageIO.read(one.toFile());
        BufferedImage b = ImageIO.read(other.toFile());
        if (a.getWidth() != b.getWidth() || a.getHeight() != b.getHeight()) {
            return 255;
        }
        long sum = 0;
        int[] p = pixels(a);
        int[] q = pixels(b);
        for (int i = 0; i < p.length; i++) {
            for (int shift = 0; shift < 32; shift += 8) {
                sum += Math.abs((p[i] >> shift & 255) - (q[i] >> shift & 255));
            }
        }
        return sum / (4.0 * p.length);
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
}
