package bandwright.pipeline.write.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Run;
import bandwright.pipeline.shop.Stall;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the owner of the tea room reads off the third sheet of orders.xlsx: tiles of 2.00 on letter paper of 0.20. */
final class OrderCostsTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    private static final String TILES = "sku,material,shape,height,width,outline,cost,heat_sources";
    private static final String PAPERS = "id,name,width,height,cost";

    @TempDir
    Path folder;

    private Stall stall;

    @BeforeEach
    void open() throws IOException {
        stall = new Stall(folder)
                .table(
                        "blanks.csv",
                        TILES,
                        "TILE,ceramic,flat,100 mm,100 mm,rectangle,2.00,flat",
                        "SMALL,ceramic,flat,50 mm,50 mm,rectangle,1.00,flat",
                        "GIFT,ceramic,flat,100 mm,100 mm,rectangle,,flat")
                .table("products.csv", "site,product,blank")
                .table("stock.csv", "sku,counted_on,count")
                .table("shop.csv", "key,value", "spoil_rate,3 %", "crop_hold,100 %", "ppi_hold,1", "paper,letter")
                .table("printers.csv", "id,papers,mirror", "desk,letter,file")
                .table("papers.csv", PAPERS, "letter,Letter,8.5 in,11 in,0.20");
    }

    /** 2.00 + 0.20 and 2.20 x 0.03 / 0.97 = 0.068 for the spoiled ones: 2.268. */
    @Test
    void onePieceOnASheetOfItsOwn() throws Exception {
        stall.orders("a.csv", "Order,SKU,Design,Qty", "Q1,TILE,tern,1");
        assertThat(costs(stall.publish()))
                .containsExactly(
                        "order|site|pieces|blanks|paper|ink|for spoiled ones|cost|not known",
                        "Q1||1|2|0.2||0.07|2.27|without ink: desk has no ink_cost in printers.csv");
    }

    /** Both on one page: the tile has four parts of the printed area, the small one a fifth: 0.16 and 0.04 of its paper. */
    @Test
    void ordersOnOneSheetShareItsPaperByArea() throws Exception {
        stall.table("shop.csv", "key,value", "spoil_rate,0 %", "crop_hold,100 %", "ppi_hold,1", "paper,letter");
        stall.orders("a.csv", "Order,SKU,Design,Qty", "Q1,TILE,tern,1", "Q2,SMALL,tern,1");
        assertThat(costs(stall.publish()).subList(1, 4))
                .containsExactly(
                        "Q1||1|2|0.16||0|2.16|without ink: desk has no ink_cost in printers.csv",
                        "Q2||1|1|0.04||0|1.04|without ink: desk has no ink_cost in printers.csv",
                        "all orders||2|3|0.2||0|3.2|without ink: desk has no ink_cost in printers.csv");
    }

    @Test
    void anOrderWithAnUnknownCostSaysWhatIsMissingInsteadOfTooLittle() throws Exception {
        stall.orders("a.csv", "Order,SKU,Design,Qty", "Q1,TILE,tern,1", "Q1,GIFT,tern,1", "Q2,TILE,tern,1");
        List<String> costs = costs(stall.publish());
        assertThat(costs.get(1)).isEqualTo("Q1||2||||||the cost of GIFT in blanks.csv");
        assertThat(costs.get(2)).startsWith("Q2||1|2|");
        assertThat(costs.get(3)).isEqualTo("all orders||3||||||some orders' costs are not known");
    }

    @Test
    void paperWithoutAPriceIsNamed() throws Exception {
        stall.table("papers.csv", PAPERS, "letter,Letter,8.5 in,11 in,");
        stall.orders("a.csv", "Order,SKU,Design,Qty", "Q1,TILE,tern,1");
        assertThat(costs(stall.publish()).get(1)).isEqualTo("Q1||1||||||the cost of letter in papers.csv");
    }

    /** Thirty tiles, six of them spoiled, weigh in as much as 3 %: (0.9 + 6) / 60 = 0.115; 2.20 x 0.115 / 0.885 = 0.286. */
    @Test
    void whatTheShopReallySpoilsIsReckonedAsSoonAsItIsLearnt() throws Exception {
        stall.orders("a.csv", "Order,SKU,Design,Qty", "Q1,TILE,tern,30");
        stall.publish(MONDAY);
        stall.spoil(IntStream.rangeClosed(1, 6).mapToObj(i -> "Q1-1-" + i).toArray(String[]::new));
        stall.empty().orders("b.csv", "Order,SKU,Design,Qty", "Q2,TILE,tern,1");
        assertThat(costs(stall.publish(MONDAY.plusDays(7))).get(1)).startsWith("Q2||1|2|0.2||0.29|2.49|");
    }

    @Test
    void twoSitesMayHaveOneOrderNumber() throws Exception {
        stall.orders("a.csv", "Site,Order,SKU,Design,Qty", "pier,Q1,TILE,tern,1", "harbour,Q1,TILE,tern,1");
        assertThat(costs(stall.publish()))
                .anyMatch(row -> row.startsWith("Q1|pier|1|"))
                .anyMatch(row -> row.startsWith("Q1|harbour|1|"));
    }

    private List<String> costs(Run run) throws IOException {
        Path file = stall.outbox().resolve(run.id().toString()).resolve(OrdersWorkbook.FILE);
        List<String> rows = new ArrayList<>();
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            XSSFSheet sheet = book.getSheet("Orders");
            for (int row = 0; row <= sheet.getLastRowNum(); row++) {
                List<String> cells = new ArrayList<>();
                for (int column = 0; column < OrderCosts.header().size(); column++) {
                    cells.add(text(sheet.getRow(row).getCell(column)));
                }
                rows.add(String.join("|", cells));
            }
        }
        return rows;
    }

    private static String text(Cell cell) {
        if (cell == null || cell.getCellType() == CellType.BLANK) {
            return "";
        }
        return cell.getCellType() == CellType.NUMERIC
                ? String.valueOf(cell.getNumericCellValue()).replaceAll("\\.0$", "")
                : cell.getStringCellValue();
    }
}
