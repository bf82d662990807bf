package bandwright.pipeline.intake.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bandwright.pipeline.rows.Cell;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTest {
    @TempDir
    Path folder;

    /** The seven rules of RFC 4180, section 2. */
    @Test
    void recordsReadAsTheStandardHasThem() throws Exception {
        String text = "order,sku\r\n\"Q,1\",\"a \"\"b\"\"\"\r\n\"two\r\nlines\",\" x \"\r\nlast,";
        assertThat(texts(text))
                .containsExactly(
                        List.of("order", "sku"),
                        List.of("Q,1", "a \"b\""),
                        List.of("two\r\nlines", " x "),
                        List.of("last"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void anyLineEndEndsARecord(String end) throws Exception {
        assertThat(texts("order,sku" + end + "Q1,MUG" + end))
                .containsExactly(List.of("order", "sku"), List.of("Q1", "MUG"));
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t", "|"})
    void theHeaderRowShowsTheSeparator(String separator) throws Exception {
        String text = "Weekend, all; of | it\n\"order\"" + separator + "sku" + separator
                + "a,b;c|d\te".replace(separator, "");
        assertThat(texts(text).get(1)).startsWith("order", "sku");
    }

    @Test
    void aRowIsNumberedByItsRecord() throws Exception {
        List<GridRow> rows = read("order,sku\n\"a\nb\",1\n\n,\nQ2,2\n\n\n,,\n".getBytes(Charset.forName("UTF-8")));
        assertThat(rows).extracting(GridRow::number).containsExactly(1, 2, 3, 4, 5);
        assertThat(rows).extracting(GridRow::isBlank).containsExactly(false, false, true, true, false);
    }

    @ParameterizedTest
    @CsvSource({
        "UTF-8, ''",
        "UTF-8, \uFEFF",
        "UTF-16LE, \uFEFF",
        "UTF-16BE, \uFEFF",
        "windows-1252, ''",
    })
    void anyAlphabetOfSpreadsheetProgramsIsRead(String charset, String mark) throws Exception {
        byte[] bytes = (mark + "order,sku\nQ1,Zoë café\n").getBytes(Charset.forName(charset));
        List<GridRow> rows = read(bytes);
        assertThat(rows.get(0).cells().get(0).text()).isEqualTo("order");
        assertThat(rows.get(1).cells().get(1).text()).isEqualTo("Zoë café");
    }

    /** index-windows-1252 of the WHATWG Encoding Standard, where it differs from ISO 8859-1 (which is its label too). */
    @Test
    void signsThatOnlyWindowsHasAreRead() throws Exception {
        byte[] bytes = "order,sku\nQ1,???????\n".getBytes(Charset.forName("US-ASCII"));
        int[] signs = {0x80, 0x85, 0x8A, 0x92, 0x96, 0x99, 0x9F};
        for (int i = 0; i < signs.length; i++) {
            bytes[13 + i] = (byte) signs[i];
        }
        assertThat(read(bytes).get(1).cells().get(1).text()).isEqualTo("\u20AC\u2026\u0160\u2019\u2013\u2122\u0178");
    }

    @Test
    void aLongNumberThatWasRoundedIsDamaged() throws Exception {
        List<Cell> cells = read("order,sku\n1.23457E+12,E+12\n".getBytes(Charset.forName("UTF-8")))
                .get(1)
                .cells();
        assertThat(cells).extracting(Cell::isDamagedNumber).containsExactly(true, false);
    }

    @Test
    void aCarelessQuoteStaysInItsCell() throws Exception {
        assertThat(texts("order,sku\nQ1,11\" mug\nQ2,\"11\" mug\"\nQ3,x").subList(1, 4))
                .containsExactly(List.of("Q1", "11\" mug"), List.of("Q2", "11 mug\""), List.of("Q3", "x"));
    }

    @Test
    void aQuoteThatNeverClosesRefusesTheFile() {
        assertThatThrownBy(() -> texts("order,sku\nQ1,a\nQ2,\"b\nQ3,c\n"))
                .isInstanceOf(Unreadable.class)
                .hasMessage("The quote that opens in row 3 is never closed.");
    }

    private List<List<String>> texts(String text) throws IOException, Unreadable {
        return read(text.getBytes(Charset.forName("UTF-8"))).stream()
                .map(row -> row.cells().stream().map(Cell::text).toList())
                .toList();
    }

    private List<GridRow> read(byte[] bytes) throws IOException, Unreadable {
        Path file = Files.write(folder.resolve("a.csv"), bytes);
        return Formats.read(file, new Allowance(), CsvTest::headers).get(0).rows();
    }

    private static int headers(List<Cell> row) {
        return (int) row.stream()
                .filter(cell -> List.of("order", "sku").contains(cell.text()))
                .count();
    }
}
