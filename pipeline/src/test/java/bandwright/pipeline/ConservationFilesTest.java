package bandwright.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.json.RunJson;
import bandwright.pipeline.write.workbook.HeldWorkbook;
import bandwright.pipeline.write.workbook.OrdersWorkbook;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConservationFilesTest {
    @TempDir
    Path folder;

    private final Run run = RunMaker.weekend().run();

    @BeforeEach
    void writtenAsMeant() throws IOException {
        write(run);
    }

    @Test
    void whatWasWrittenIsWhatWasMeant() throws IOException {
        assertThat(Conservation.checkFiles(run, folder)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"made\": 1|\"made\": 2|rows.made",
                "\"read\": 5|\"read\": 4|rows.read",
                "\"id\": \"Q1042-1-2\"|\"id\": \"Q1042-1-1\"|units.id",
                "\"sheet\": 1|\"sheet\": 0|units.sheet",
                "\"page\": 2|\"page\": 3|sheets.page",
                "\"pieces\": 2|\"pieces\": 1|held.pieces",
                "\"2026-03-02-1\"|\"2026-03-02-2\"|run",
            })
    void anEditedRunJsonIsFound(String was, String is, String where) throws IOException {
        Path json = folder.resolve("run.json");
        String text = Files.readString(json);
        assertThat(text).contains(was);
        Files.writeString(json, text.replaceFirst(Pattern.quote(was), is));

        assertThat(Conservation.checkFiles(run, folder)).anyMatch(said -> said.contains("run.json: " + where));
    }

    @Test
    void filesOfARunWithARowLessAreFound() throws IOException {
        RunMaker less = RunMaker.weekend();
        less.held.remove(1);
        write(less.run());

        assertThat(Conservation.checkFiles(run, folder))
                .anyMatch(said -> said.startsWith("orders.xlsx"))
                .anyMatch(said -> said.startsWith("held.xlsx"))
                .anyMatch(said -> said.startsWith("run.json"));
    }

    @Test
    void aMissingHeldFileIsFound() throws IOException {
        Files.delete(folder.resolve("held.xlsx"));

        assertThat(Conservation.checkFiles(run, folder))
                .containsExactly("held.xlsx: rows differs at 1: meant 2, found 0");
    }

    @Test
    void aMissingFileOfSheetsIsFound() throws IOException {
        Files.delete(folder.resolve("sheets/letter-01.pdf"));

        assertThat(Conservation.checkFiles(run, folder)).anyMatch(said -> said.startsWith("sheets: files"));
    }

    @Test
    void aStrayFileAmongTheSheetsIsFound() throws IOException {
        Files.copy(folder.resolve("sheets/letter-01.pdf"), folder.resolve("sheets/letter-02.pdf"));

        assertThat(Conservation.checkFiles(run, folder)).anyMatch(said -> said.startsWith("sheets: files"));
    }

    @Test
    void longAndOddUnitIdsAreNoMismatch() throws IOException {
        RunMaker maker = new RunMaker();
        String order = "_x0041_" + "7".repeat(100);
        maker.line(GiftShop.row(GiftShop.from(2), GiftShop.HEADER, order, "MUG-11-W", "tern.jpg", "500"), 500, 500, 0);
        Run large = maker.placed().run();
        write(large);
        Files.deleteIfExists(folder.resolve("held.xlsx"));

        assertThat(Conservation.checkFiles(large, folder)).isEmpty();
    }

    /** The lists; the sheets' own test draws and reads sheets, so here empty files stand for them. */
    private void write(Run written) throws IOException {
        for (Output output : List.of(new HeldWorkbook(), new OrdersWorkbook(), new RunJson())) {
            for (OutFile file : output.files(written, GiftShop.rules())) {
                try (OutputStream out = Files.newOutputStream(folder.resolve(file.name()))) {
                    file.body().writeTo(out);
                }
            }
        }
        Files.createDirectories(folder.resolve("sheets"));
        for (SheetFile file : SheetFiles.of(written.tiled()).files()) {
            Files.write(folder.resolve(file.name()), new byte[0]);
        }
    }
}
