package bandwright.pipeline.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

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
        Path artwork = SAMPLE.resolve("artwork");
        try (Stream<Path> kept = Files.walk(artwork)) {
            assertThat(kept.filter(Files::isRegularFile)
                            .map(file -> artwork.relativize(file).toString()))
                    .containsExactlyInAnyOrderElementsOf(pictures);
        }
        for (String picture : pictures) {
            Path path = Path.of("artwork", picture);
            if (picture.endsWith(".svg")) {
                assertThat(SAMPLE.resolve(path)).hasSameTextualContentAs(fresh.resolve(path));
                continue;
            }
            assertThat(PictureDifference.of(
                            ImageIO.read(SAMPLE.resolve(path).toFile()),
                            ImageIO.read(fresh.resolve(path).toFile())))
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
}
