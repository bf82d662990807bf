package bandwright.pipeline.intake.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Old and open workbooks that mean harm, or are broken: each ends in one plain line with a cure. */
class HostileWorkbookTest {
    private static final String DAMAGED = "The file is damaged: its inside is not what such a file has.";
    private static final String NAMES = "xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
            + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
            + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\"";

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1048576 | 1    | The file holds more rows and cells than one run can take.",
                "1000000 | 1000 | The file holds more rows and cells than one run can take.",
                "2000000000 | 1 | The file holds more rows and cells than one run can take.",
                "1       | 2000000000 | ''",
            })
    void cellsThatSayTheyAreRepeatedForEver(String rows, String columns, String refusal) throws IOException {
        String row = "<table:table-row table:number-rows-repeated=\"" + rows
                + "\"><table:table-cell office:value-type=\"string\" table:number-columns-repeated=\"" + columns
                + "\"><text:p>tern</text:p></table:table-cell></table:table-row>";
        assertThat(refusal(ods(row))).isEqualTo(refusal);
    }

    @Test
    void blankRowsAndCellsCostNothing() throws IOException {
        String blank = "<table:table-row table:number-rows-repeated=\"1048576\">"
                + "<table:table-cell table:number-columns-repeated=\"16384\"/></table:table-row>";
        assertThat(refusal(ods(blank.repeat(1000)))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"32768", "2000000000", "1e300"})
    void moreBlanksThanACellHolds(String blanks) throws IOException {
        String cell = "<text:p>a<text:s text:c=\"" + blanks + "\"/>b</text:p>";
        assertThat(refusal(ods("<table:table-row><table:table-cell>" + cell + "</table:table-cell></table:table-row>")))
                .isEqualTo("A cell in row 1 has more than 32767 characters.");
    }

    @Test
    void mergedCellsWithoutMeasure() throws IOException {
        String cell = "<table:table-cell table:number-rows-spanned=\"1048576\"><text:p>a</text:p></table:table-cell>";
        assertThat(refusal(ods("<table:table-row>" + cell.repeat(900) + "</table:table-row>")))
                .isEqualTo("The file holds more rows and cells than one run can take.");
    }

    @Test
    void anOpenDocumentThatDeclaresEntities() throws IOException {
        String content = "<!DOCTYPE a [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><a>&x;</a>";
        assertThat(refusal(zip("<m/>", content)))
                .isEqualTo("The file declares its own kind of XML, which no spreadsheet program does.");
    }

    @Test
    void anOpenDocumentWithAPassword() throws IOException {
        assertThat(refusal(zip("<manifest><file-entry><encryption-data/></file-entry></manifest>", "x")))
                .isEqualTo("The workbook has a password.");
    }

    @Test
    void anOpenDocumentThatIsALetter() throws IOException {
        assertThat(refusal(zip("<m/>", "<office:text " + NAMES + "/>")))
                .isEqualTo("The file is a zip archive, but no workbook.");
    }

    @Test
    void sharedTextsThatClaimToBeBillions() throws IOException {
        byte[] bytes = fixture("orders.xls");
        int table = find(bytes, new byte[] {(byte) 0xFC, 0});
        Arrays.fill(bytes, table + 8, table + 11, (byte) 0xFF);
        bytes[table + 11] = 0x7F;
        assertThat(refusal(bytes)).isEqualTo(DAMAGED);
    }

    @Test
    void anOldWorkbookWithAPassword() throws IOException {
        Biff8EncryptionKey.setCurrentUserPassword("tern");
        try (HSSFWorkbook book = new HSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            book.createSheet("Orders").createRow(0).createCell(0).setCellValue("order");
            book.write(out);
            assertThat(refusal(out.toByteArray())).isEqualTo("The workbook has a password.");
        } finally {
            Biff8EncryptionKey.setCurrentUserPassword(null);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"orders.xls", "orders.ods"})
    void aWorkbookThatIsCutShortOrScribbledOver(String file) throws IOException {
        byte[] whole = fixture(file);
        for (int length = 9; length < whole.length; length += 211) {
            refusal(Arrays.copyOf(whole, length));
        }
        for (int seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            byte[] bytes = whole.clone();
            for (int i = 0; i < 8; i++) {
                bytes[8 + random.nextInt(bytes.length - 8)] = (byte) random.nextInt(256);
            }
            assertThat(refusal(bytes)).as("seed %d", seed).doesNotContain("\n");
        }
    }

    private static int find(byte[] bytes, byte[] start) {
        for (int i = 512; i < bytes.length; i++) {
            if (Arrays.equals(bytes, i, i + start.length, start, 0, start.length)) {
                return i;
            }
        }
        throw new AssertionError("not there");
    }

    private static byte[] fixture(String name) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(HostileWorkbookTest.class.getResourceAsStream("/formats/" + name))) {
            return in.readAllBytes();
        }
    }

    private String refusal(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("hostile.bin"), bytes);
        Unreadable refused =
                catchThrowableOfType(Unreadable.class, () -> Formats.read(file, new Allowance(), row -> 0));
        if (refused == null) {
            return "";
        }
        assertThat(refused.cure()).isNotBlank().doesNotContain("\n", "Exception", "{");
        return String.valueOf(refused.getMessage());
    }

    private static byte[] ods(String rows) throws IOException {
        return zip(
                "<m/>",
                "<office:spreadsheet " + NAMES + "><table:table table:name=\"Orders\">" + rows
                        + "</table:table></office:spreadsheet>");
    }

    private static byte[] zip(String manifest, String content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("META-INF/manifest.xml"));
            zip.write(manifest.getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry("content.xml"));
            zip.write(content.getBytes(StandardCharsets.UTF_8));
        }
        return out.toByteArray();
    }
}
