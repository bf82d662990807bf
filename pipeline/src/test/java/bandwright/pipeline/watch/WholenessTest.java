package bandwright.pipeline.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether the end of a copy is there. */
final class WholenessTest {
    private static final Path WORKBOOK = Path.of("..", "inbox-sample", "weekend-orders.xlsx");

    @TempDir
    private Path folder;

    @Test
    void aWorkbookIsWholeOnlyWithItsLastByte() throws IOException {
        byte[] whole = Files.readAllBytes(WORKBOOK);
        assertThat(seen("whole.xlsx", whole)).isEqualTo(Seen.WHOLE);
        for (int cut : new int[] {1, 21, 22, 100, whole.length / 2, whole.length - 4}) {
            assertThat(seen("cut.xlsx", Arrays.copyOf(whole, whole.length - cut)))
                    .as("without its last %d bytes", cut)
                    .isEqualTo(Seen.CUT_SHORT);
        }
    }

    @Test
    void aSizeThatWasSetBeforeTheBytesCameIsSeen() throws IOException {
        byte[] whole = Files.readAllBytes(WORKBOOK);
        assertThat(seen("half.xlsx", Arrays.copyOf(Arrays.copyOf(whole, 3000), whole.length)))
                .isEqualTo(Seen.CUT_SHORT);
        assertThat(seen("none.xlsx", new byte[5000])).isEqualTo(Seen.CUT_SHORT);
        assertThat(seen("half.csv", Arrays.copyOf(bytes("Order,SKU\nQ1,MUG"), 500)))
                .isEqualTo(Seen.CUT_SHORT);
    }

    @Test
    void textsNeedNoEnd() throws IOException {
        assertThat(seen("a.csv", bytes("Order,SKU\nQ1,MUG-11-W"))).isEqualTo(Seen.WHOLE);
        assertThat(seen("b.csv", "\uFEFFOrder\nQ1".getBytes(StandardCharsets.UTF_16LE)))
                .as("UTF-16 ends with a zero")
                .isEqualTo(Seen.WHOLE);
        assertThat(seen("c.csv", new byte[0])).isEqualTo(Seen.EMPTY);
    }

    private Seen seen(String name, byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve(name), bytes);
        return Wholeness.of(file, bytes.length);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
