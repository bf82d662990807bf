package bandwright.pipeline.write.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.GiftShop;
import bandwright.pipeline.Run;
import bandwright.pipeline.RunMaker;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.intake.Intake;
import bandwright.pipeline.intake.Orders;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Header;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.blanks.Blank;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reads both workbooks with another library than the one that writes them. */
class WorkbooksTest {
    @TempDir
    private Path folder;

    private static final HeldWorkbook HELD = new HeldWorkbook();
    private static final OrdersWorkbook ORDERS = new OrdersWorkbook();

    @Test
    void heldRowsKeepTheirColumnsAndSayReasonCureAndFrom() throws IOException {
        XSSFSheet sheet = book(HELD, RunMaker.weekend().run()).getSheet("Orders");

        assertThat(texts(sheet, 0)).containsExactly("Order", "SKU", "Artwork", "Qty", "Name", "reason", "cure", "from");
        assertThat(texts(sheet, 2))
                .containsExactly(
                        "Q1046",
                        "MUG-11-W",
                        "storm-lamp.jpg",
                        "1",
                        "",
                        "The artwork folder has no \"storm-lamp.jpg\". (artwork-missing)",
                        "Put it there.",
                        "orders.xlsx | Orders | 4");
        assertThat(sheet.getLastRowNum()).isEqualTo(2);
        assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
    }

    @Test
    void aRowMadeInPartStatesOnlyWhatIsStillToMake() throws IOException {
        XSSFSheet sheet = book(HELD, RunMaker.weekend().run()).getSheet("Orders");

        assertThat(texts(sheet, 1)).startsWith("0071", "MUG-11-W", "tern.jpg", "2");
    }

    @Test
    void theFaultyCellIsMarkedAndNoOther() throws IOException {
        XSSFSheet sheet = book(HELD, RunMaker.weekend().run()).getSheet("Orders");

        for (Cell cell : sheet.getRow(2)) {
            boolean marked = cell.getCellStyle().getFillPattern() == FillPatternType.SOLID_FOREGROUND;
            assertThat(marked).as(cell.getAddress().toString()).isEqualTo(cell.getColumnIndex() == 2);
            assertThat(cell.getCellStyle().getDataFormatString()).isEqualTo("@");
        }
    }

    @Test
    void withoutHeldRowsThereIsNoFile() {
        assertThat(HELD.files(new RunMaker().run(), GiftShop.rules())).isEmpty();
    }

    @Test
    void eachInputSheetHasItsOwnUnderALegalName() throws IOException {
        RunMaker maker = new RunMaker();
        for (Optional<String> sheet : List.of(
                Optional.of("Terns [1/2]: the very long name of a sheet"),
                Optional.of("terns _1_2__ THE very long name of a list"),
                Optional.<String>empty())) {
            From from = new From("choir.csv", sheet, 2);
            maker.hold(GiftShop.row(from, GiftShop.HEADER, "Q1", "MUG-11-W", "x.jpg"), 1);
        }
        XSSFWorkbook book = book(HELD, maker.run());

        assertThat(book.getNumberOfSheets()).isEqualTo(3);
        assertThat(book.getSheetName(0)).isEqualTo("Terns _1_2__ the very long name");
        assertThat(book.getSheetName(1)).isEqualTo("terns _1_2__ THE very long (2)");
        assertThat(book.getSheetName(2)).isEqualTo("choir");
        assertThat(texts(book.getSheetAt(2), 1)).last().isEqualTo("choir.csv |  | 2");
    }

    @Test
    void aHeldFileThatIsHeldAgainKeepsItsFirstFromAndNoColumnTwice() throws IOException {
        Header header = GiftShop.header("Order", "Artwork", "reason", "cure", "from");
        From from = new From("held.xlsx", Optional.of("Orders"), 2);
        RunMaker maker = new RunMaker()
                .hold(GiftShop.row(from, header, "Q1046", "lamp.jpg", "was", "do", "orders.xlsx | Orders | 4"), 1);
        XSSFSheet sheet = book(HELD, maker.run()).getSheetAt(0);

        assertThat(texts(sheet, 0)).containsExactly("Order", "Artwork", "reason", "cure", "from");
        assertThat(texts(sheet, 1)).startsWith("Q1046", "lamp.jpg").endsWith("orders.xlsx | Orders | 4");
    }

    @Test
    void hostileTextStaysInertAndUnchanged() throws IOException {
        List<String> typed = List.of(
                "=1+1", "+SUM(A1)", "@x", "-2", "0071", "  two  ", "a\r\nb\tc", "_x0041_", "<b>&\"'", "\uD83D\uDC26");
        RunMaker maker = new RunMaker();
        Header header = new Header(typed, Map.of());
        maker.hold(GiftShop.row(GiftShop.from(2), header, typed.toArray(String[]::new)), 1);
        XSSFSheet sheet = book(HELD, maker.run()).getSheetAt(0);

        assertThat(texts(sheet, 0)).startsWith(typed.toArray(String[]::new));
        assertThat(texts(sheet, 1)).startsWith(typed.toArray(String[]::new));
        for (Cell cell : sheet.getRow(1)) {
            assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
        }
    }

    @Test
    void whatNoFileCanHoldIsSeenToBeMissing() {
        assertThat(CellText.of("a\0b\u001Bc\uD83Dd\uFFFEe")).isEqualTo("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe");
        assertThat(CellText.of("x".repeat(32_767))).isEqualTo("x".repeat(32_767));
        assertThat(CellText.of("\uD83D\uDC26".repeat(20_000)))
                .hasSizeLessThanOrEqualTo(32_767)
                .endsWith(" [cut: the text is longer than a cell holds]")
                .doesNotContain("\uFFFD");
    }

    @Test
    void everyRowSaysWhatBecameOfIt() throws IOException {
        XSSFSheet sheet = book(ORDERS, RunMaker.weekend().run()).getSheetAt(0);

        assertThat(texts(sheet, 0))
                .startsWith("file", "sheet", "row", "order")
                .endsWith("unit cost", "ink, cm2 in full");
        assertThat(texts(sheet, 1))
                .containsExactly(
                        "orders.xlsx",
                        "Orders",
                        "2",
                        "Q1042",
                        "1",
                        "MUG-11-W",
                        "tern.jpg",
                        "name: Ada",
                        "2",
                        "made",
                        "",
                        "",
                        "Q1042-1-1; Q1042-1-2",
                        "sheets/letter-01.pdf page 1",
                        "1; 2",
                        "2.16",
                        "0");
        assertThat(texts(sheet, 2)).contains("0071", "3", "part", "artwork-missing", "0071-1-1", "2.27");
        assertThat(texts(sheet, 3)).contains("Q1046", "held", "storm-lamp.jpg");
        assertThat(texts(sheet, 4)).contains("Q1001", "skipped", "cancelled", "The order is cancelled.");
        assertThat(texts(sheet, 5)).contains("6", "empty");
        assertThat(sheet.getRow(1).getCell(8).getCellType()).isEqualTo(CellType.NUMERIC);
    }

    @Test
    void twoWritingsGiveTheSameBytes() throws IOException {
        Run run = RunMaker.weekend().run();

        assertThat(bytes(HELD, run)).isEqualTo(bytes(HELD, run));
        assertThat(bytes(ORDERS, run)).isEqualTo(bytes(ORDERS, run));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTC", "Asia/Tokyo", "America/St_Johns"})
    void theComputersTimeZoneLeavesNoMark(String zone) throws IOException {
        Run run = RunMaker.weekend().run();
        byte[] here = bytes(ORDERS, run);
        TimeZone before = TimeZone.getDefault();
        TimeZone.setDefault(TimeZone.getTimeZone(zone));
        try {
            assertThat(bytes(ORDERS, run)).isEqualTo(here);
        } finally {
            TimeZone.setDefault(before);
        }
    }

    @Test
    void aCellWithAClosedListOffersItButTakesOtherWordsToo() throws IOException {
        XSSFWorkbook book = book(HELD, RunMaker.weekend().run());

        XSSFDataValidation skus = book.getSheet("Orders").getDataValidations().get(0);
        assertThat(skus.getValidationConstraint().getExplicitListValues()).containsExactly("MUG-11-W");
        assertThat(skus.getRegions().getCellRangeAddresses())
                .extracting(CellRangeAddress::formatAsString)
                .containsExactly("B2:B3");
        assertThat(skus.getShowErrorBox()).isFalse();
        assertThat(skus.getSuppressDropDownArrow()).isTrue(); // the library's name for an arrow that shows
        assertThat(book.getNumberOfSheets()).isEqualTo(1);
    }

    @Test
    void aLongListStandsInAHiddenSheet() throws IOException {
        List<Blank> many = IntStream.range(0, 100)
                .mapToObj(n -> GiftShop.mug("MUG, No. " + n, Optional.empty()))
                .toList();
        XSSFWorkbook book = book(HELD, RunMaker.weekend().run(), GiftShop.rules(many));

        XSSFDataValidation skus = book.getSheet("Orders").getDataValidations().get(0);
        assertThat(skus.getValidationConstraint().getFormula1()).isEqualTo("choices!$A$1:$A$100");
        assertThat(book.isSheetHidden(book.getSheetIndex("choices"))).isTrue();
        assertThat(book.getSheet("choices").getRow(99).getCell(0).getStringCellValue())
                .isEqualTo("MUG, No. 99");
    }

    @Test
    void theListsOfADroppedHeldFileAreNoSheetToReport() throws IOException, RulebookFaults {
        List<Blank> many = IntStream.range(0, 100)
                .mapToObj(n -> GiftShop.mug("MUG, No. " + n, Optional.empty()))
                .toList();
        Rulebook rules = GiftShop.rules(many);
        Path file = folder.resolve("held.xlsx");
        Files.write(file, bytes(HELD, RunMaker.weekend().run(), rules));

        Orders orders = Intake.read(List.of(file), Rulebook.read(Optional.empty()));
        assertThat(orders.files()).extracting(InboxFile::sheet).containsExactly(Optional.of("Orders"));
    }

    private static byte[] bytes(Output output, Run run) throws IOException {
        return bytes(output, run, GiftShop.rules());
    }

    private static byte[] bytes(Output output, Run run, Rulebook rules) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (OutFile file : output.files(run, rules)) {
            file.body().writeTo(bytes);
        }
        return bytes.toByteArray();
    }

    private static XSSFWorkbook book(Output output, Run run) throws IOException {
        return book(output, run, GiftShop.rules());
    }

    private static XSSFWorkbook book(Output output, Run run, Rulebook rules) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes(output, run, rules)));
    }

    private static List<String> texts(XSSFSheet sheet, int number) {
        Row row = sheet.getRow(number);
        List<String> texts = new ArrayList<>();
        for (int column = 0; column < sheet.getRow(0).getLastCellNum(); column++) {
            Cell cell = row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
            texts.add(
                    cell.getCellType() == CellType.NUMERIC
                            ? BigDecimal.valueOf(cell.getNumericCellValue())
                                    .stripTrailingZeros()
                                    .toPlainString()
                            : cell.getStringCellValue());
        }
        return texts;
    }
}
