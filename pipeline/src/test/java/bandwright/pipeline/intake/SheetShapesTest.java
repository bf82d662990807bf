package bandwright.pipeline.intake;

import static bandwright.pipeline.intake.format.WorkbookParts.row;
import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.intake.format.WorkbookParts;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets as people really keep them: titles, totals, merged cells, hidden rows, one table under another. */
class SheetShapesTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"orders.xlsx", "orders-1904.xlsx", "orders.ods"})
    void aMergedOrderNumberBelongsToEachOfItsRows(String file) throws Exception {
        Orders orders = read(fixture(file));
        assertThat(orders.lines()).extracting(OrderLine::order).containsExactly("1000123", "Q1044", "Q1044", "00042");
        assertThat(orders.lines()).extracting(OrderLine::line).containsExactly("1", "1", "2", "1");
    }

    @Test
    void hiddenRowsAndTotalsAreSaid() throws Exception {
        Orders orders = read(fixture("orders.ods"));
        assertThat(orders.held()).isEmpty();
        assertThat(orders.empty()).extracting(row -> row.from().row()).containsExactly(8);
        assertThat(orders.files().get(0).message())
                .isEqualTo("Hidden rows are read like the others: 1 (row 7)."
                        + " Rows with totals only are left out: 1 (row 8).");
    }

    @Test
    void aMergedQuantityIsAskedFor() throws Exception {
        Orders orders = read(new WorkbookParts()
                .sheet(
                        "Orders",
                        row(1, "order", "sku", "quantity") + row(2, "Q1", "MUG", "2") + row(3, "", "MUG", "")
                                + "</sheetData><mergeCells><mergeCell ref=\"A2:A3\"/><mergeCell ref=\"C2:C3\"/></mergeCells><sheetData>")
                .write(folder.resolve("merged.xlsx")));
        assertThat(orders.lines()).extracting(OrderLine::order).containsExactly("Q1");
        assertThat(orders.held())
                .extracting(held -> held.order() + held.reason().code())
                .containsExactly("Q1quantity-unclear");
    }

    @Test
    void tablesStandBelowEachOtherWithTheirOwnColumns() throws Exception {
        Orders orders =
                read(csv("order,sku,design\nQ1,MUG,heron\n\nSecond weekend,,\nsku,order,design\nMUG,Q2,tern\n"));
        assertThat(orders.held()).isEmpty();
        assertThat(orders.lines()).extracting(OrderLine::order).containsExactly("Q1", "Q2");
        assertThat(orders.empty()).extracting(row -> row.from().row()).containsExactly(3, 4, 5);
        assertThat(orders.files()).extracting(InboxFile::rows).containsExactly(5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Total,,,57", ",,Total:,57", "Grand total,,,\"1,234\"", ",,sum,$57.00"})
    void aRowThatSumsUpIsNoOrder(String total) throws Exception {
        Orders orders = read(csv("order,sku,design,quantity\nQ1,MUG,heron,57\n" + total + "\n"));
        assertThat(orders.held()).isEmpty();
        assertThat(orders.empty()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Total,MUG,heron,1", ",MUG,,57", ",,,57", "Q2,,Total,1"})
    void aRowThatMayBeAnOrderIsNoTotal(String cells) throws Exception {
        Orders orders = read(csv("order,sku,design,quantity\nQ1,MUG,heron,57\n" + cells + "\n"));
        assertThat(orders.empty()).isEmpty();
    }

    @Test
    void anOrderNumberThatASpreadsheetRoundedIsHeld() throws Exception {
        Orders orders = read(csv("order,sku,design\n1.23457E+12,MUG,heron\n"));
        assertThat(orders.held()).extracting(held -> held.reason().code()).containsExactly("number-damaged");
    }

    private Path csv(String text) throws IOException {
        return Files.write(folder.resolve("orders.csv"), text.getBytes(StandardCharsets.UTF_8));
    }

    private static Path fixture(String name) throws URISyntaxException {
        return Path.of(Objects.requireNonNull(SheetShapesTest.class.getResource("/formats/" + name))
                .toURI());
    }

    private static Orders read(Path file) {
        return Intake.read(List.of(file), TestRules.plain());
    }
}
