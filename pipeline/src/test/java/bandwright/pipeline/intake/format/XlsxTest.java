package bandwright.pipeline.intake.format;

import static bandwright.pipeline.intake.format.WorkbookParts.row;
import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.rows.Cell;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class XlsxTest {
    private static final String STYLES = "<numFmts><numFmt numFmtId=\"164\" formatCode=\"00000\"/></numFmts><cellXfs>"
            + "<xf numFmtId=\"0\"/><xf numFmtId=\"14\"/><xf numFmtId=\"164\"/></cellXfs>";

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<c t='s'><v>0</v></c>                                    | heron",
                "<c t='s'><v>1</v></c>                                    | Ada & Tom",
                "<c t='s'><v>2</v></c>                                    | 東京",
                "<c t='inlineStr'><is><t>tide</t></is></c>                | tide",
                "<c t='inlineStr'><is><r><t>storm </t></r><r><t>lamp</t></r></is></c> | storm lamp",
                "<c t='inlineStr'><is><t>a_x000D_b_x005F_x0041_</t></is></c> | 'a\rb_x0041_'",
                "<c t='inlineStr'><is><t>x_xD83D_y</t></is></c>           | x\uFFFDy",
                "<c t='str'><f>A1&amp;B1</f><v>Q-1042</v></c>             | Q-1042",
                "<c><f>1+2</f><v>3</v></c>                                | 3",
                "<c t='e'><v>#N/A</v></c>                                 | #N/A",
                "<c t='b'><v>1</v></c>                                    | TRUE",
                "<c><v>1234567890123</v></c>                              | 1234567890123",
                "<c><v>1.234567890123E12</v></c>                          | 1234567890123",
                "<c s='2'><v>123</v></c>                                  | 00123",
                "<c s='1'><v>46083</v></c>                                | 2026-03-02",
                "<c s='1'><v>46083.75</v></c>                             | 2026-03-02 18:00:00",
                "<c s='1'><v>60</v></c>                                   | 60",
                "<c t='d'><v>2026-03-02T10:00:00</v></c>                  | 2026-03-02T10:00:00",
                "<c t='n' s='99'><v>12</v></c>                            | 12",
                "<c><v>nonsense</v></c>                                   | nonsense",
                "<c t='inlineStr'><is><t><![CDATA[<b>]]></t></is></c>     | <b>",
            })
    void aCellReadsAsAPersonSeesIt(String cell, String text) throws Exception {
        Path file = new WorkbookParts()
                .styles(STYLES)
                .strings("<si><t>heron</t></si><si><r><t>Ada </t></r><r><rPr><b/></rPr><t>&amp; Tom</t></r></si>"
                        + "<si><t>東京</t><rPh sb=\"0\" eb=\"2\"><t>トウキョウ</t></rPh></si>")
                .sheet("Orders", "<row r=\"1\">" + cell + "</row>")
                .write(folder.resolve("a.xlsx"));
        assertThat(only(file).rows().get(0).cells()).extracting(Cell::text).containsExactly(text.replace("\\r", "\r"));
    }

    @ParameterizedTest
    @CsvSource({"59, 1900-02-28", "61, 1900-03-01", "35981, 1998-07-05", "2958465, 9999-12-31"})
    void aDateCellHasItsDay(String serial, LocalDate day) throws Exception {
        assertThat(dateCell(new WorkbookParts(), serial).date()).contains(day);
    }

    @Test
    void dayOfAWorkbookFrom1904() throws Exception {
        assertThat(dateCell(new WorkbookParts().from1904(), "34519").date()).contains(LocalDate.of(1998, 7, 5));
    }

    @Test
    void theDayThatNeverWasIsNoDay() throws Exception {
        assertThat(dateCell(new WorkbookParts(), "60").date()).isEmpty();
    }

    /** The strict form of ECMA-376 Part 1 has namespaces of its own (Annex L), else nothing that matters here differs. */
    @Test
    void theStrictFormReadsTheSame() throws Exception {
        String strict = "http://purl.oclc.org/ooxml/";
        Path file = new WorkbookParts()
                .part(
                        "_rels/.rels",
                        "<Relationships><Relationship Id=\"a\" Type=\"" + strict
                                + "officeDocument/relationships/officeDocument\" Target=\"book/book.xml\"/></Relationships>")
                .part(
                        "book/book.xml",
                        "<x:workbook xmlns:x=\"" + strict + "spreadsheetml/main\" xmlns:r=\"" + strict
                                + "officeDocument/relationships\"><x:workbookPr date1904=\"true\"/><x:sheets>"
                                + "<x:sheet name=\"Orders\" sheetId=\"1\" r:id=\"s\"/></x:sheets></x:workbook>")
                .part(
                        "book/_rels/book.xml.rels",
                        "<Relationships><Relationship Id=\"s\" Type=\"" + strict
                                + "officeDocument/relationships/worksheet\" Target=\"sheet.xml\"/></Relationships>")
                .part(
                        "book/sheet.xml",
                        "<x:worksheet xmlns:x=\"" + strict + "spreadsheetml/main\"><x:sheetData><x:row r=\"1\">"
                                + "<x:c r=\"A1\"><x:v>1000123.0</x:v></x:c><x:c r=\"B1\" t=\"d\"><x:v>2026-03-02</x:v></x:c>"
                                + "</x:row></x:sheetData></x:worksheet>")
                .write(folder.resolve("strict.xlsx"));
        List<Cell> cells = only(file).rows().get(0).cells();
        assertThat(cells).extracting(Cell::text).containsExactly("1000123", "2026-03-02");
        assertThat(cells.get(1).date()).contains(LocalDate.of(2026, 3, 2));
    }

    private Cell dateCell(WorkbookParts parts, String serial) throws Exception {
        Path file = parts.styles(STYLES)
                .sheet("Orders", "<row><c s=\"1\"><v>" + serial + "</v></c></row>")
                .write(folder.resolve("dates.xlsx"));
        return only(file).rows().get(0).cells().get(0);
    }

    @Test
    void rowsAndColumnsHaveTheirOwnNumbers() throws Exception {
        Path file = new WorkbookParts()
                .sheet(
                        "Orders",
                        "<row r=\"3\"><c r=\"B3\"><v>1</v></c><c r=\"AA3\"><v>2</v></c></row>"
                                + "<row r=\"4\"/><row r=\"7\"><c r=\"A7\" s=\"0\"/></row>"
                                + "<row r=\"9\" hidden=\"1\"><c r=\"A9\"><v>3</v></c></row>"
                                + "<row r=\"12\"><c r=\"A12\"/></row>")
                .write(folder.resolve("a.xlsx"));
        List<GridRow> rows = only(file).rows();
        assertThat(rows).extracting(GridRow::number).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9);
        List<Cell> third = rows.get(2).cells();
        assertThat(third).hasSize(27);
        assertThat(third.get(1).text()).isEqualTo("1");
        assertThat(third.get(26).text()).isEqualTo("2");
        assertThat(rows)
                .filteredOn(row -> !row.isBlank())
                .extracting(GridRow::number)
                .containsExactly(3, 9);
    }

    @Test
    void hiddenSheetsAreNamedButNotRead() throws Exception {
        Path file = new WorkbookParts()
                .sheet("Old", "state=\"hidden\"", row(1, "a"))
                .sheet("Older", "state=\"veryHidden\"", row(1, "b"))
                .sheet("New", "state=\"visible\"", row(1, "c"))
                .write(folder.resolve("a.xlsx"));
        List<Grid> grids = read(file);
        assertThat(grids).extracting(Grid::isHidden).containsExactly(true, true, false);
        assertThat(grids).extracting(grid -> grid.rows().size()).containsExactly(0, 0, 1);
    }

    @Test
    void damagedNumbersSaySo() throws Exception {
        Path file = new WorkbookParts()
                .sheet(
                        "Orders",
                        "<row><c><v>114736829102938475</v></c><c t=\"inlineStr\"><is><t>114736829102938475</t></is></c></row>")
                .write(folder.resolve("a.xlsx"));
        assertThat(only(file).rows().get(0).cells())
                .extracting(Cell::isDamagedNumber, Cell::text)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(true, "114736829102938000"),
                        org.assertj.core.groups.Tuple.tuple(false, "114736829102938475"));
    }

    @Test
    void manyEntitiesAreNoAttack() throws Exception {
        StringBuilder rows = new StringBuilder();
        for (int i = 1; i <= 4_000; i++) {
            rows.append(row(i, "&amp;&lt;&gt;&#38;&quot;".repeat(10)));
        }
        Path file = new WorkbookParts().sheet("Orders", rows.toString()).write(folder.resolve("a.xlsx"));
        assertThat(only(file).rows()).hasSize(4_000);
    }

    @Test
    void aWorkbookOfAnotherProgramReadsTheSame() throws Exception {
        Path file = folder.resolve("poi.xlsx");
        writeWithPoi(file);
        List<Cell> cells = only(file).rows().get(4).cells();
        assertThat(cells)
                .extracting(Cell::text)
                .containsExactly("0071", "71", "2026-03-02", "merged", "", "6", "00123", "FALSE");
        assertThat(cells.get(2).date()).contains(LocalDate.of(2026, 3, 2));
    }

    private static void writeWithPoi(Path file) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet sheet = book.createSheet("Orders");
            var row = sheet.createRow(4);
            row.createCell(0).setCellValue("0071");
            row.createCell(1).setCellValue(71);
            CellStyle date = book.createCellStyle();
            date.setDataFormat(book.createDataFormat().getFormat("dd/mm/yyyy"));
            row.createCell(2).setCellValue(LocalDate.of(2026, 3, 2));
            row.getCell(2).setCellStyle(date);
            row.createCell(3).setCellValue("merged");
            sheet.addMergedRegion(new CellRangeAddress(4, 4, 3, 4));
            row.createCell(5).setCellFormula("2*3");
            book.getCreationHelper().createFormulaEvaluator().evaluateAll();
            CellStyle zeros = book.createCellStyle();
            zeros.setDataFormat(book.createDataFormat().getFormat("00000"));
            row.createCell(6).setCellValue(123);
            row.getCell(6).setCellStyle(zeros);
            row.createCell(7).setCellValue(false);
            book.write(out);
        }
    }

    private static Grid only(Path file) throws Unreadable {
        List<Grid> grids = read(file);
        assertThat(grids).hasSize(1);
        return grids.get(0);
    }

    private static List<Grid> read(Path file) throws Unreadable {
        return Formats.read(file, new Allowance(), row -> 0);
    }
}
