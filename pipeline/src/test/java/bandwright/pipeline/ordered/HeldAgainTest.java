package bandwright.pipeline.ordered;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Run;
import bandwright.pipeline.shop.Stall;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person gets of a held row, and what becomes of it once its cell is mended. */
final class HeldAgainTest {
    private static final String PRODUCTS = "site,product,variation,blank,design,count,texts";

    @TempDir
    private Path folder;

    private Stall stall = new Stall(Path.of(""));

    @BeforeEach
    void open() throws IOException {
        stall = new Stall(folder);
        stall.table(
                "products.csv",
                PRODUCTS,
                ",Pair,,MUG-11-W,lamp,,",
                ",Pair,,MUG-15-W,tern,,",
                ",Tea for two,,MUG-11-W,tern,2,",
                ",Tea for two,,,,,");
    }

    @Test
    void aMendedSetHasTheNamesThatItWouldHaveHad() throws Exception {
        stall.orders("fair.csv", "Order,Product,Qty,Ship By", "Q1,Pair,2,03/04/2026");
        Run first = stall.publish();
        assertThat(Stall.story(first)).containsExactly("held Q1 x2 date-unclear");

        stall.dropMended(first, "03/04/2026", "2026-03-04");
        Run second = stall.publish();
        assertThat(Stall.story(second))
                .containsExactlyInAnyOrder(
                        "made Q1-1-1 MUG-11-W lamp",
                        "made Q1-1-2 MUG-15-W tern",
                        "made Q1-1-3 MUG-11-W lamp",
                        "made Q1-1-4 MUG-15-W tern");
    }

    @Test
    void aSetThatIsNoDrinkwareInPartKeepsItsQuantity() throws Exception {
        stall.table("designs.csv", "design,artwork", "tern,gone.png", "lamp,storm-lamp.png");
        stall.orders("fair.csv", "Order,Product,Qty", "Q1,Tea for two,3");
        Run run = stall.publish();
        assertThat(Stall.story(run)).containsExactly("held Q1 x6 artwork-missing", "skipped Q1 x3 not-drinkware");
        assertThat(held(run).get(1)).startsWith("Q1", "Tea for two", "3");
    }

    @Test
    void aSetWaitsWholeForTheBlankThatIsShortAndIsMadeOnce() throws Exception {
        stall.table("shop.csv", "key,value", "stock,hold");
        stall.table("stock.csv", "sku,counted_on,count", "MUG-15-W,2026-03-01,1");
        stall.orders("fair.csv", "Order,Product,Qty", "Q1,Pair,2");
        Run first = stall.publish();
        assertThat(Stall.story(first))
                .containsExactlyInAnyOrder(
                        "made Q1-1-1 MUG-11-W lamp", "made Q1-1-2 MUG-15-W tern", "held Q1 x2 out-of-stock");
        assertThat(held(first).get(1)).startsWith("Q1", "Pair", "1");

        stall.table("stock.csv", "sku,counted_on,count", "MUG-15-W,2026-03-01,9");
        stall.dropMended(first, "", "");
        assertThat(Stall.story(stall.publish()))
                .containsExactlyInAnyOrder("made Q1-1-3 MUG-11-W lamp", "made Q1-1-4 MUG-15-W tern");
    }

    @Test
    void theSameExportNextWeekMakesNothingOfASetAgain() throws Exception {
        stall.orders("fair.csv", "Order,Product,Qty", "Q1,Pair,2", "Q2,Tea for two,1");
        assertThat(stall.publish().units()).hasSize(6);
        assertThat(stall.publish().units()).isEmpty();
        assertThat(Stall.story(stall.publish()))
                .containsExactly(
                        "skipped Q1 x4 already-made", "skipped Q2 x1 not-drinkware", "skipped Q2 x2 already-made");
    }

    @Test
    void aQuestionStandsReadyInTheWorkbookAndOnThePage() throws Exception {
        stall.table("texts.csv", "design,field,required", "lamp,name,yes");
        stall.orders(
                        "fair.csv",
                        "Order,SKU,Design,Personalisation",
                        "Q1,MUG-11-W,lamp,",
                        "Q2,MUG-11-W,tern,\"For Ada & <Ben>\"")
                .orders("web.csv", "Order,SKU,Design,Personalisation", "Q3,MUGG,lamp,");
        Run run = stall.publish();
        List<List<String>> rows = held(run);
        assertThat(rows.get(0))
                .containsExactly("Order", "SKU", "Design", "Personalisation", "ask", "reason", "cure", "from");
        assertThat(rows.get(1).get(4)).isEqualTo("About your order Q1: What should we print as \"name\"?");
        assertThat(rows.get(2).get(4)).startsWith("About your order Q2: you wrote \"For Ada & <Ben>\". ");
        assertThat(rows.get(3))
                .as("no question, no column")
                .containsExactly("Order", "SKU", "Design", "Personalisation", "reason", "cure", "from");

        String page =
                Files.readString(stall.outbox().resolve(run.id().toString()).resolve("index.html"));
        assertThat(page).contains("you wrote &quot;For Ada &amp; &lt;Ben&gt;&quot;.");

        stall.dropMended(run, "For Ada & <Ben>", "");
        Run next = stall.publish();
        assertThat(Stall.story(next)).contains("made Q2-1-1 MUG-11-W tern");
        assertThat(held(next).get(0))
                .as("the question is asked once")
                .containsExactly("Order", "SKU", "Design", "Personalisation", "ask", "reason", "cure", "from");
    }

    /** All rows of a run's held.xlsx, sheet after sheet. */
    private List<List<String>> held(Run run) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        Path file = stall.outbox().resolve(run.id().toString()).resolve("held.xlsx");
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            for (int sheet = 0; sheet < book.getNumberOfSheets(); sheet++) {
                if (!book.isSheetHidden(sheet)) {
                    for (Row row : book.getSheetAt(sheet)) {
                        List<String> cells = new ArrayList<>();
                        row.forEach(cell -> cells.add(cell.getStringCellValue()));
                        rows.add(cells);
                    }
                }
            }
        }
        return rows;
    }
}
