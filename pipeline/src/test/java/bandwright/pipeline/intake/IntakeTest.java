package bandwright.pipeline.intake;

import static bandwright.pipeline.intake.format.WorkbookParts.row;
import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.intake.format.WorkbookParts;
import bandwright.rules.Rulebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntakeTest {
    private static final String HEADER =
            "Order #,SKU,Design,Qty,Ship By,Status,Product,Personalisation,Site,Text: Name\n";

    @TempDir
    Path folder;

    @Test
    void aPlainRowBecomesALine() throws Exception {
        OrderLine line = onlyLine(HEADER + "0071, MUG-11-W ,heron,3,2 March 2026,New,Mug,,,Ada\n");
        assertThat(line.order()).isEqualTo("0071");
        assertThat(line.line()).isEqualTo("1");
        assertThat(line.items().get(0).sku()).isEqualTo("MUG-11-W");
        assertThat(line.items().get(0).design()).isEqualTo("heron");
        assertThat(line.quantity()).isEqualTo(3);
        assertThat(line.shipBy()).contains(LocalDate.of(2026, 3, 2));
        assertThat(line.orderDate()).isEmpty();
        assertThat(line.wording().columns()).containsExactly(java.util.Map.entry("name", "Ada"));
        assertThat(line.gift()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "',MUG,heron,1,,,,,,'             | order-missing     | The row has no order number.",
                "'#N/A,MUG,heron,1,,,,,,'         | order-missing     | The order number is #N/A: a formula that failed.",
                "'-,MUG,heron,1,,,,,,'            | order-missing     | The row has no order number.",
                "'Q1,MUG,heron,,,,,,,'            | quantity-unclear  | The quantity is empty.",
                "'Q1,MUG,heron,2.5,,,,,,'         | quantity-unclear  | '\"2.5\" is not a whole number from 1 to 500.'",
                "'Q1,MUG,heron,1,02/03/2026,,,,,' | date-unclear      | '\"02/03/2026\" can be 3 February 2026 or 2 March 2026.'",
                "'Q1,MUG,heron,1,soon,,,,,'       | date-unclear      | '\"soon\" is not a date.'",
                "'Q1,,heron,1,,,Tern mug,,,'      | product-unknown   | 'products.csv has no row for \"Tern mug\".'",
            })
    void aRowThatIsUnclearIsHeldWithACure(String cells, String code, String message) throws Exception {
        HeldRow held = onlyHeld(HEADER + cells + "\n");
        assertThat(held.reason().code()).isEqualTo(code);
        assertThat(held.reason().message()).isEqualTo(message);
        assertThat(held.reason().cure()).isNotBlank().doesNotContain("{");
        assertThat(held.column()).isNotBlank();
    }

    @Test
    void aHeldRowSaysHowManyPiecesWait() throws Exception {
        HeldRow held = onlyHeld(HEADER + "Q1,MUG,heron,4,soon,,,,,\n");
        assertThat(held.pieces()).isEqualTo(4);
        assertThat(held.order()).isEqualTo("Q1");
        assertThat(held.column()).isEqualTo("Ship By");
    }

    @Test
    void aCancelledRowIsSkippedWhateverElseIsWrong() throws Exception {
        Orders orders = csv(HEADER + "Q1,MUG,heron,2,,CANCELLED ,,,,\nQ2,,,none,soon,refunded,,x,,\n");
        assertThat(orders.skipped())
                .extracting(row -> row.code() + row.pieces())
                .containsExactly("cancelled2", "cancelled0");
        assertThat(orders.held()).isEmpty();
    }

    @Test
    void withoutAQuantityColumnEveryRowIsOnePiece() throws Exception {
        assertThat(onlyLine("Order,SKU\nQ1,MUG\n").quantity()).isEqualTo(1);
    }

    @Test
    void linesAreCountedPerOrderOverAllSheetsAndKeepTheirNumbers() throws Exception {
        Path file = new WorkbookParts()
                .sheet(
                        "One",
                        row(1, "Order", "SKU", "Qty", "Line")
                                + row(2, "Q1", "A", "1", "")
                                + row(3, "Q2", "A", "1", "")
                                + row(4, "Q1", "B", "bad", ""))
                .sheet(
                        "Two",
                        row(1, "Order", "SKU", "Qty", "Line")
                                + row(2, "Q1", "C", "1", "")
                                + row(3, "Q1", "D", "1", "9"))
                .write(folder.resolve("a.xlsx"));
        Orders orders = Intake.read(List.of(file), TestRules.plain());
        assertThat(orders.lines())
                .extracting(line ->
                        line.order() + "-" + line.line() + line.items().get(0).sku())
                .containsExactly("Q1-1A", "Q2-1A", "Q1-3C", "Q1-9D");
    }

    @Test
    void blankRowsAndRepeatedHeadersAreEmpty() throws Exception {
        Orders orders = csv("Order,SKU\nQ1,MUG\n\n , \nOrder,SKU\nQ2,MUG\n\n\n");
        assertThat(orders.empty()).extracting(row -> row.from().row()).containsExactly(3, 4, 5);
        assertThat(orders.files().get(0).rows()).isEqualTo(5);
        assertThat(orders.lines()).extracting(line -> line.row().from().row()).containsExactly(2, 6);
    }

    @Test
    void theHeaderMayStandFurtherDown() throws Exception {
        String titles = "Quillmoor gift shop\n".repeat(19);
        assertThat(csv(titles + "Order,SKU\nQ1,MUG\n").lines()).hasSize(1);
        assertThat(csv(titles + "and\nOrder,SKU\nQ1,MUG\n").lines()).isEmpty();
    }

    @Test
    void ofTwoColumnsForOneFieldTheFirstWins() throws Exception {
        assertThat(onlyLine("Order,Order Number,SKU\nQ1,7,MUG\n").order()).isEqualTo("Q1");
    }

    @Test
    void aNumberThatLostItsDigitsIsHeld() throws Exception {
        String cells = "<row r=\"2\"><c><v>114736829102938475</v></c><c t=\"inlineStr\"><is><t>MUG</t></is></c></row>";
        Path file = new WorkbookParts()
                .sheet("Orders", row(1, "Order", "SKU") + cells)
                .write(folder.resolve("a.xlsx"));
        HeldRow held = Intake.read(List.of(file), TestRules.plain()).held().get(0);
        assertThat(held.reason().code()).isEqualTo("number-damaged");
        assertThat(held.column()).isEqualTo("Order");
    }

    @Test
    void sheetsThatAreNoOrdersAreHarmlessBesideOnesThatAre() throws Exception {
        Path file = new WorkbookParts()
                .sheet("Notes", row(1, "Tides", "High"))
                .sheet("Orders", row(2, "Order", "SKU") + row(5, "Q1", "MUG"))
                .sheet("Old", "state=\"hidden\"", row(1, "Order", "SKU") + row(2, "Q0", "MUG"))
                .write(folder.resolve("a.xlsx"));
        Orders orders = Intake.read(List.of(file), TestRules.plain());
        assertThat(orders.files())
                .extracting(each -> each.sheet().orElse("") + " " + each.state().word() + " " + each.rows())
                .containsExactly("Notes not orders 0", "Orders read 3", "Old hidden 0");
        assertThat(orders.unread()).isEmpty();
        assertThat(orders.empty()).extracting(row -> row.from().row()).containsExactly(3, 4);
        assertThat(orders.lines())
                .extracting(line -> line.row().from())
                .hasToString("[From[file=a.xlsx, sheet=Optional[Orders], row=5]]");
    }

    @Test
    void aFileWithoutOrdersIsNamedAndStopsNoOther() throws Exception {
        Path none = Files.writeString(folder.resolve("a.csv"), "tides,high\n1,2\n");
        Path bad = Files.write(folder.resolve("b.xlsx"), new byte[] {'P', 'K', 3, 4, 0});
        Path good = Files.writeString(folder.resolve("c.csv"), "Order,SKU\nQ1,MUG\n");
        Orders orders = Intake.read(List.of(none, bad, folder.resolve("gone.csv"), good), TestRules.plain());
        assertThat(orders.files())
                .extracting(file -> file.state().word())
                .containsExactly("not orders", "unreadable", "unreadable", "read");
        assertThat(orders.unread()).extracting(InboxFile::file).containsExactly("a.csv", "b.xlsx", "gone.csv");
        assertThat(orders.unread())
                .allSatisfy(file -> assertThat(file.message()).matches("[^\\n]+[.] [^\\n]+[.]"));
        assertThat(orders.lines()).hasSize(1);
    }

    @Test
    void filesOfOneNameAreToldApart() throws Exception {
        Files.createDirectories(folder.resolve("fair"));
        Path one = Files.writeString(folder.resolve("a.csv"), "Order,SKU\nQ1,MUG\n");
        Path two = Files.writeString(folder.resolve("fair").resolve("a.csv"), "Order,SKU\nQ1,MUG\n");
        assertThat(Intake.read(List.of(one, two), TestRules.plain()).files())
                .extracting(InboxFile::file)
                .containsExactly(one.toString(), two.toString());
    }

    @Test
    void aSiteIsFoundByTheFilesNameByItsHeadersOrByTheRow() throws Exception {
        Rulebook rules = TestRules.with(
                TestRules.PLAIN,
                TestRules.site("Harbour Fair", "", "dmy", '.'),
                TestRules.site("Choir Stall", "choir*.c?v", "mdy", '.'));
        Path choir = Files.writeString(
                folder.resolve("Choir-May.csv"),
                "Order,SKU,Ship By,Site\nQ1,MUG,02/03/2026,\nQ2,MUG,02/03/2026,harbour fair\nQ3,MUG,3 Mar 2026,Rowing Club\n");
        Path fair = Files.writeString(folder.resolve("fair.csv"), "Ticket;Ware;Ship By\nQ4;MUG;02/03/2026\n");
        Path plain = Files.writeString(folder.resolve("plain.csv"), "Order,SKU,Ship By\nQ5,MUG,02/03/2026\n");
        Orders orders = Intake.read(List.of(choir, fair, plain), rules);
        assertThat(orders.lines())
                .extracting(line ->
                        line.order() + " " + line.site() + " " + line.shipBy().orElseThrow())
                .containsExactly(
                        "Q1 Choir Stall 2026-02-03",
                        "Q2 Harbour Fair 2026-03-02",
                        "Q3 Rowing Club 2026-03-03",
                        "Q4 Harbour Fair 2026-03-02");
        assertThat(orders.held()).extracting(HeldRow::order).containsExactly("Q5");
        assertThat(orders.files()).extracting(InboxFile::site).containsExactly("Choir Stall", "Harbour Fair", "");
    }

    @Test
    void aSitesHeaderRowIsTheOneShown() throws Exception {
        var site = TestRules.site("", "", "", '.', java.util.OptionalInt.of(2), List.of(), false);
        Path file = Files.writeString(folder.resolve("a.csv"), "Order,SKU\nOrder,Blank\nQ1,MUG\n");
        assertThat(Intake.read(List.of(file), TestRules.with(site))
                        .lines()
                        .get(0)
                        .row()
                        .header()
                        .texts())
                .containsExactly("Order", "Blank");
    }

    @Test
    void aSiteThatWaitsForApprovalSaysWhatItsRowsSay() throws Exception {
        var site = TestRules.site("", "", "", '.', java.util.OptionalInt.empty(), List.of(), true);
        Path file = Files.writeString(folder.resolve("a.csv"), "Order,SKU,Approved\nQ1,MUG,4KX7Q\nQ2,MUG,\n");
        assertThat(Intake.read(List.of(file), TestRules.with(site)).lines())
                .extracting(OrderLine::approved)
                .containsExactly(Optional.of("4KX7Q"), Optional.of(""));
        assertThat(Intake.read(List.of(file), TestRules.with(TestRules.PLAIN)).lines())
                .extracting(OrderLine::approved)
                .containsOnly(Optional.empty());
    }

    @Test
    void aSiteWithoutCancelWordsHasThoseOfTheUnnamedOne() throws Exception {
        Rulebook rules = TestRules.with(TestRules.PLAIN, TestRules.site("Fair", "a.csv", "", '.'));
        Path file = Files.writeString(folder.resolve("a.csv"), "Order,SKU,Status\nQ1,MUG,Cancelled\n");
        assertThat(Intake.read(List.of(file), rules).skipped()).hasSize(1);
    }

    private OrderLine onlyLine(String text) throws IOException {
        Orders orders = csv(text);
        assertThat(orders.held()).isEmpty();
        assertThat(orders.lines()).hasSize(1);
        return orders.lines().get(0);
    }

    private HeldRow onlyHeld(String text) throws IOException {
        Orders orders = csv(text);
        assertThat(orders.lines()).isEmpty();
        assertThat(orders.held()).hasSize(1);
        return orders.held().get(0);
    }

    private Orders csv(String text) throws IOException {
        Path file = Files.write(folder.resolve("orders.csv"), text.getBytes(StandardCharsets.UTF_8));
        return Intake.read(List.of(file), TestRules.plain());
    }
}
