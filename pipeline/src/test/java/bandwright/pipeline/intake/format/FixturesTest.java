package bandwright.pipeline.intake.format;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.rows.Cell;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that other programs wrote (formats/make.py says which): one table of orders, the same whatever it is kept in. */
class FixturesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @ParameterizedTest
    @ValueSource(strings = {"orders.xlsx", "orders-1904.xlsx", "orders.xls", "orders-1904.xls", "orders.ods"})
    void theSameOrdersReadTheSame(String file) throws Exception {
        Grid orders = read(file).get(0);
        assertThat(orders.sheet()).contains("Orders");
        assertThat(orders.rows().stream().map(FixturesTest::texts).toList().subList(0, 7))
                .containsExactly(
                        List.of("Weekend of the lighthouse"),
                        List.of(),
                        List.of("Order", "SKU", "Design", "Quantity", "Order Date", "Text: Name", "Buyer"),
                        List.of("1000123", "MUG-11-W", "heron", "1", "2026-03-02", "Ada", "Wilhelmina Tern"),
                        List.of("Q1044", "MUG-11-W", "storm-lamp", "2", "2026-03-02", "Zoë & Ben", "Osric Sandhopper"),
                        List.of("", "MUG-15-W", "storm-lamp", "1", "2026-03-02", "two\nlines", "Osric Sandhopper"),
                        List.of("00042", "MUG-11-W", "tide-table", "3", "2026-03-02", "  spaced", "Quillmoor Choir"));
        assertThat(orders.rows().get(3).cells().get(4).date()).contains(DAY);
        assertThat(orders.rows().get(7).cells().subList(2, 4))
                .extracting(Cell::text)
                .containsExactly("Total", "7");
        assertThat(orders.rows())
                .filteredOn(GridRow::isHidden)
                .extracting(GridRow::number)
                .containsExactly(7);
        assertThat(orders.merges()).containsExactly(new Merge(5, 6, 0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"orders.xlsx", "orders.xls", "orders.ods"})
    void hiddenSheetsAreNamedButNotRead(String file) throws Exception {
        List<Grid> hidden = read(file).stream().filter(Grid::isHidden).toList();
        assertThat(hidden).isNotEmpty().allMatch(grid -> grid.rows().isEmpty());
        assertThat(hidden).extracting(grid -> grid.sheet().orElseThrow()).contains("Old");
    }

    @Test
    void anOldWorkbookShowsItsValuesAsAPersonSeesThem() throws Exception {
        List<Cell> values = read("orders.xls").get(1).rows().get(0).cells();
        assertThat(values)
                .extracting(Cell::text)
                .containsExactly(
                        "00123",
                        "25%",
                        "114736829102938000",
                        "114736829102938475",
                        "TRUE",
                        "60",
                        "2.5",
                        "storm lamp",
                        "#N/A");
        assertThat(values).extracting(Cell::isDamagedNumber).startsWith(false, false, true, false);
        assertThat(values.get(5).date()).as("29 February 1900 never was").isEmpty();
    }

    /** OpenDocument 1.2, Part 1, 19.385: float, percentage, currency, boolean, time, date, string. */
    @Test
    void anOpenDocumentShowsEveryTypeOfValue() throws Exception {
        List<GridRow> rows = read("orders.ods").get(1).rows();
        List<Cell> values = rows.get(0).cells();
        assertThat(values)
                .extracting(Cell::text)
                .containsExactly(
                        "00123",
                        "1234567",
                        "1234567890123",
                        "25%",
                        "12.5",
                        "TRUE",
                        "10:30",
                        "2026-03-02 18:00:00",
                        "6",
                        "#DIV/0!",
                        "114736829102938000",
                        "tern",
                        "tern");
        assertThat(values.get(7).date()).contains(DAY);
        assertThat(values.get(10).isDamagedNumber()).isTrue();
        assertThat(rows).extracting(GridRow::number).containsExactly(1, 2, 3, 4);
        assertThat(texts(rows.get(3))).containsExactly("again");
    }

    private static List<String> texts(GridRow row) {
        return row.cells().stream().map(Cell::text).toList();
    }

    private static List<Grid> read(String file) throws Unreadable, URISyntaxException {
        Path path = Path.of(Objects.requireNonNull(FixturesTest.class.getResource("/formats/" + file))
                .toURI());
        return Formats.read(path, new Allowance(), row -> 0);
    }
}
