package bandwright.pipeline.write.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.Run;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.shop.Stall;
import bandwright.pipeline.size.Unit;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ink of pictures whose colours and areas are known: a tile of 100 x 100 mm, half black, a quarter red, the rest white. */
final class UnitInksTest {
    @TempDir
    Path folder;

    private Stall stall;

    @BeforeEach
    void open() throws IOException {
        Path artwork = Files.createDirectories(folder.resolve("artwork"));
        BufferedImage image = new BufferedImage(1000, 1000, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 1000, 1000);
        g.setColor(Color.BLACK);
        g.fillRect(0, 0, 1000, 500);
        g.setColor(Color.RED);
        g.fillRect(0, 500, 500, 500);
        g.dispose();
        ImageIO.write(image, "png", artwork.resolve("halves.png").toFile());
        stall = new Stall(folder)
                .artwork(artwork)
                .table(
                        "blanks.csv",
                        "sku,material,shape,height,width,outline,cost,heat_sources",
                        "TILE,ceramic,flat,100 mm,100 mm,rectangle,2.00,flat")
                .table("designs.csv", "design,artwork", "halves,halves.png")
                .table("texts.csv", "design,field,anchor,x,y,width,height,max_size,colour")
                .table("products.csv", "site,product,blank")
                .table("stock.csv", "sku,counted_on,count")
                .orders("a.csv", "Order,SKU,Design,Personalisation", "Q1,TILE,halves,");
    }

    @Test
    void blackTakesItsOwnAreaAndRedTwoThirdsOfIt() throws Exception {
        assertThat(new UnitInks(new Sights()).mm2(unit()).orElseThrow()).isCloseTo(5000 + 2500 * 2 / 3.0, within(20.0));
    }

    /** A capital I is a bar: its ink is its area, and the hole of an O is no ink. */
    @Test
    void lettersTakeTheAreaOfTheirOutlinesWithoutTheirHoles() throws Exception {
        double bare = new UnitInks(new Sights()).mm2(unit()).orElseThrow();
        stall.table(
                "texts.csv",
                "design,field,anchor,x,y,width,height,font,max_size,colour",
                "halves,name,band,50 %,50 %,50 %,50 %,sans,1000,#000000");
        stall.orders("a.csv", "Order,SKU,Design,Personalisation", "Q1,TILE,halves,I");
        double bar = new UnitInks(new Sights()).mm2(unit()).orElseThrow() - bare;
        stall.orders("a.csv", "Order,SKU,Design,Personalisation", "Q1,TILE,halves,O");
        double ring = new UnitInks(new Sights()).mm2(unit()).orElseThrow() - bare;
        // 50 mm high; Liberation Sans has a stem of 0.14 of the height of its capitals.
        assertThat(bar).isBetween(50 * 50 * 0.12, 50 * 50 * 0.16);
        assertThat(ring).isBetween(500.0, 1100.0);
    }

    /** 0.006667 square metres of full ink at 30 a square metre are 0.20; the blank 2.00, the paper without a price. */
    @Test
    void inkThatHasAPriceIsPartOfTheCost() throws Exception {
        stall.table("printers.csv", "id,papers,mirror,ink_cost", "desk,letter,file,30", "wide,13x19|tabloid,driver,")
                .table(
                        "papers.csv",
                        "id,name,width,height,cost",
                        "letter,Letter,8.5 in,11 in,0.00",
                        "13x19,Large,13 in,19 in,",
                        "tabloid,Tabloid,11 in,17 in,")
                .table("shop.csv", "key,value", "spoil_rate,0 %", "paper,letter", "printer,desk");
        Run run = stall.publish();
        try (InputStream in = Files.newInputStream(
                        stall.outbox().resolve(run.id().toString()).resolve(OrdersWorkbook.FILE));
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            XSSFSheet rows = book.getSheetAt(0);
            assertThat(rows.getRow(1)
                            .getCell(OrdersWorkbook.Column.COST.number())
                            .getNumericCellValue())
                    .isEqualTo(2.20);
            assertThat(rows.getRow(1)
                            .getCell(OrdersWorkbook.Column.INK.number())
                            .getNumericCellValue())
                    .isEqualTo(67);
            assertThat(book.getSheetAt(1).getRow(1).getCell(2).getNumericCellValue())
                    .isEqualTo(67);
        }
    }

    private Unit unit() throws Exception {
        List<Unit> units = stall.run().units();
        assertThat(units).hasSize(1);
        return units.get(0);
    }
}
