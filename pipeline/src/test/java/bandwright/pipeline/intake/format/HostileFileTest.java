package bandwright.pipeline.intake.format;

import static bandwright.pipeline.intake.format.WorkbookParts.row;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that mean harm, or are broken: each ends in one plain line with a cure. */
class HostileFileTest {
    @TempDir
    Path folder;

    @Test
    void aSheetThatUnpacksToMoreThanItMay() throws IOException {
        assertThat(refusal(bomb("<row><c><v>1</v></c></row>", 210_000_000)))
                .isEqualTo("The file unpacks to more than 200 MB.");
    }

    @Test
    void aSheetThatLiesAboutItsSize() throws IOException {
        byte[] bytes = bomb("<row><c><v>1</v></c></row>", 210_000_000);
        forgeSizes(bytes);
        assertThat(refusal(bytes)).startsWith("The file ");
    }

    @Test
    void moreRowsThanASheetHas() throws IOException {
        assertThat(refusal(bomb("<row/>".repeat(10) + "<row><c><v>1</v></c></row>", 150_000_000)))
                .isIn(
                        "A sheet has more than 1048576 rows.",
                        "The file holds more rows and cells than one run can take.");
    }

    @Test
    void aRowNumberBeyondTheLast() throws IOException {
        String rows = "<row r=\"1048577\"><c><v>1</v></c></row>";
        assertThat(refusal(new WorkbookParts().sheet("Orders", rows).bytes()))
                .isEqualTo("A sheet has more than 1048576 rows.");
    }

    @Test
    void wideRowsCountByTheirWidth() throws IOException {
        assertThat(refusal(bomb("<row><c r=\"ALK1\"><v>1</v></c></row>", 30_000_000)))
                .isEqualTo("The file holds more rows and cells than one run can take.");
    }

    @Test
    void oneTagWithoutEnd() throws IOException {
        assertThat(refusal(bomb("<!-- " + "<row> ".repeat(1_000_000) + " -->", 1)))
                .isEqualTo("The file unpacks to more than 200 MB.");
    }

    @Test
    void elementsInsideElements() throws IOException {
        assertThat(refusal(bomb("<a>", 3_000_000)))
                .isEqualTo("The file is damaged: its inside is not what such a file has.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"xl/worksheets/sheet1.xml", "xl/sharedStrings.xml", "xl/styles.xml", "_rels/.rels"})
    void aPartThatDeclaresEntities(String part) throws IOException {
        String lol = "<!DOCTYPE a [<!ENTITY x SYSTEM \"file:///etc/hostname\"><!ENTITY y \"&x;&x;\">]><a>&y;</a>";
        byte[] bytes = new WorkbookParts()
                .sheet("Orders", row(1, "order", "sku"))
                .part(part, lol)
                .bytes();
        assertThat(refusal(bytes))
                .isEqualTo("The file declares its own kind of XML, which no spreadsheet program does.");
    }

    @Test
    void aCellThatIsTooLong() throws IOException {
        String full = "x".repeat(32_767);
        assertThat(refusal(new WorkbookParts()
                        .sheet("Orders", row(1, full) + row(2, full + "x"))
                        .bytes()))
                .isEqualTo("A cell in row 2 has more than 32767 characters.");
        assertThat(refusal(new WorkbookParts().sheet("Orders", row(1, full)).bytes()))
                .isEmpty();
        assertThat(refusal(new WorkbookParts()
                        .sheet("O", "")
                        .strings("<si><t>" + full + "x</t></si>")
                        .bytes()))
                .isEqualTo("A cell has more than 32767 characters.");
        assertThat(refusal(("a,b\n1," + full + "x\n").getBytes(StandardCharsets.UTF_8)))
                .isEqualTo("A cell in row 2 has more than 32767 characters.");
    }

    @Test
    void moreSheetsThanAWorkbookOfOrdersHas() throws IOException {
        WorkbookParts parts = new WorkbookParts();
        for (int i = 0; i <= 200; i++) {
            parts.sheet("S" + i, "");
        }
        assertThat(refusal(parts.bytes())).isEqualTo("The workbook has more than 200 sheets.");
    }

    @Test
    void aWorkbookThatIsCutShort() throws IOException {
        byte[] whole = new WorkbookParts().sheet("Orders", row(1, "order")).bytes();
        for (int length = 4; length < whole.length; length += 97) {
            assertThat(refusal(Arrays.copyOf(whole, length)))
                    .as("%d bytes", length)
                    .startsWith("The file is damaged");
        }
    }

    @Test
    void aTextThatIsNotThere() throws IOException {
        for (String index : new String[] {"7", "-1", "x", ""}) {
            String rows = "<row><c t=\"s\"><v>" + index + "</v></c></row>";
            String expected = index.isEmpty() ? "" : "The file is damaged: its inside is not what such a file has.";
            assertThat(refusal(new WorkbookParts().sheet("Orders", rows).bytes()))
                    .isEqualTo(expected);
        }
    }

    @Test
    void aWorkbookWithAPassword() throws Exception {
        try (POIFSFileSystem files = new POIFSFileSystem();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("tern");
            try (var in = encryptor.getDataStream(files)) {
                in.write(new WorkbookParts().sheet("Orders", row(1, "order")).bytes());
            }
            files.writeFilesystem(out);
            assertThat(refusal(out.toByteArray())).isEqualTo("The workbook has a password.");
        }
    }

    @Test
    void filesThatAreNoSpreadsheets() throws IOException {
        assertThat(refusal("<html><table><tr><td>order</td></tr></table></html>".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo("The file is a web page or XML, whatever its name says.");
        assertThat(refusal(new byte[] {'%', 'P', 0, 1, 2, 3})).isEqualTo("The file is neither a spreadsheet nor text.");
        assertThat(refusal(zip("readme.txt", "hello"))).isEqualTo("The file is a zip archive, but no workbook.");
        assertThat(refusal(new byte[0])).isEmpty();
    }

    @Test
    void aRefusedFileGivesBackWhatItTook() throws IOException {
        Allowance allowance = new Allowance();
        long before = allowance.left();
        Path file = Files.write(folder.resolve("a.csv"), "order,sku\nQ1,\"x".getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> Formats.read(file, allowance, row -> 0)).isInstanceOf(Unreadable.class);
        assertThat(allowance.left()).isEqualTo(before);
    }

    private String refusal(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("hostile.xlsx"), bytes);
        Unreadable refused =
                catchThrowableOfType(Unreadable.class, () -> Formats.read(file, new Allowance(), row -> 0));
        if (refused == null) {
            return "";
        }
        assertThat(refused.cure()).isNotBlank().doesNotContain("\n", "Exception", "{");
        assertThat(refused.getMessage()).doesNotContain("\n", "Exception", "{");
        return String.valueOf(refused.getMessage());
    }

    /** A workbook whose sheet repeats that up to so many bytes. */
    private static byte[] bomb(String piece, int bytes) throws IOException {
        byte[] rows = piece.getBytes(StandardCharsets.UTF_8);
        byte[] block = rows.length > 100_000
                ? rows
                : piece.repeat(100_000 / rows.length).getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.setLevel(1);
            zip.putNextEntry(new ZipEntry("xl/_rels/workbook.xml.rels"));
            zip.write("<a><Relationship Id=\"s\" Type=\"x/worksheet\" Target=\"sheet.xml\"/></a>"
                    .getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
            zip.write("<workbook xmlns:r=\"r\"><sheet name=\"Orders\" r:id=\"s\"/></workbook>"
                    .getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry("xl/sheet.xml"));
            zip.write("<worksheet><sheetData>".getBytes(StandardCharsets.UTF_8));
            for (long written = 0; written < bytes; written += block.length) {
                zip.write(block);
            }
            zip.write("</sheetData></worksheet>".getBytes(StandardCharsets.UTF_8));
        }
        return out.toByteArray();
    }

    /** Writes small unpacked sizes into the zip's directory (APPNOTE 4.3.12: at 24 of each header). */
    private static void forgeSizes(byte[] zip) {
        for (int i = 0; i + 28 < zip.length; i++) {
            if (zip[i] == 'P' && zip[i + 1] == 'K' && zip[i + 2] == 1 && zip[i + 3] == 2) {
                Arrays.fill(zip, i + 24, i + 28, (byte) 1);
                zip[i + 27] = 0;
                zip[i + 26] = 0;
            }
        }
    }

    private static byte[] zip(String name, String text) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return out.toByteArray();
    }
}
