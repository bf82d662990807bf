package bandwright.pipeline.ordered;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Run;
import bandwright.pipeline.shop.Stall;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rowing club's mugs, week after week: what was spoiled teaches the pick list, the index and run.json. */
final class SpoiledWeeksTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
    private static final String SETTINGS = "material,heat_kind,temperature,time,pressure,allowed";

    @TempDir
    Path folder;

    private Stall stall;

    @BeforeEach
    void open() throws IOException {
        stall = new Stall(folder)
                .table(
                        "blanks.csv",
                        "sku,name,material,shape,top_diameter,height,handle_width,heat_sources",
                        "ROWING,Rowing mug,ceramic,cylinder,82 mm,95 mm,22 mm,clamp|oven")
                .table("products.csv", "site,product,blank")
                .table("stock.csv", "sku,counted_on,count")
                .table(
                        "press-settings.csv",
                        SETTINGS,
                        "ceramic,mug press,190 C,180 s,medium,yes",
                        "ceramic,oven,190 C,15 min,,yes");
    }

    @Test
    void asLongAsTooFewWereMadeTheShopsWordCounts() throws Exception {
        order("Q1", 29, "");
        Run first = stall.publish(FIRST);
        spoil("Q1", 6);
        assertThat(pickList(first)).contains("ROWING").doesNotContain("Spares from your own");
        order("Q2", 40, "");
        Run second = stall.publish(FIRST.plusDays(7));
        assertThat(pickList(second)).contains("40 3 43").doesNotContain("Spares from your own");
        assertThat(read(second, "index.html"))
                .contains("Spoiled, and why", "<td>29</td>", "<td>6</td>", "3 %, as shop.csv says", "ghosted: 6");
    }

    @Test
    void thirtyPiecesTeachTheSparesOfTheirOwnHeatSourceOnly() throws Exception {
        order("Q1", 30, "");
        stall.publish(FIRST);
        spoil("Q1", 6);
        order("Q2", 40, "");
        Run second = stall.publish(FIRST.plusDays(7));
        // 11 spares: worked out in exact fractions; Beta(6.9, 53.1) lies between 4.7 and 20.3 % (Apache Commons
        // Statistics).
        assertThat(pickList(second))
                .contains("40 11 51", "Spares from your own 6 of 30 spoiled (Mug press): 4.8 % to 20.6 %");
        order("Q3", 40, "oven");
        Run third = stall.publish(FIRST.plusDays(14));
        assertThat(pickList(third)).contains("40 3 43").doesNotContain("Spares from your own");
    }

    @Test
    void oneLineSharesTheSparesOfSeveralHeatSources() throws Exception {
        order("Q1", 30, "");
        stall.publish(FIRST);
        spoil("Q1", 6);
        order("Q2", 40, "", "Q3,ROWING,tern,40,oven");
        Run second = stall.publish(FIRST.plusDays(7));
        // At 40 each 11 and 3; together 13 do (convolution in exact fractions).
        assertThat(pickList(second))
                .contains("80 13 93", "6 of 30 spoiled (Mug press)", "for the others (Convection oven): 3 %");
    }

    @Test
    void twoSettingsAreComparedAndRunJsonKeepsTheCounts() throws Exception {
        order("Q1", 60, "");
        stall.publish(FIRST);
        spoil("Q1", 6);
        stall.table("press-settings.csv", SETTINGS, "ceramic,mug press,385 F,150 s,medium,yes");
        order("Q2", 60, "");
        stall.publish(FIRST.plusDays(7));
        spoil("Q2", 2);
        order("Q3", 1, "");
        Run third = stall.publish(FIRST.plusDays(14));
        assertThat(read(third, "index.html"))
                .contains("6 of 60 spoiled with 374 \u00b0F (190 \u00b0C), 3 min, medium;"
                        + " 2 of 60 with 385 \u00b0F (196 \u00b0C), 2 min 30 s, medium: not yet certain")
                .contains("in 27 of 100 cases", "the supplier&#39;s listing and the maker&#39;s manual win");
        assertThat(read(third, "run.json").replaceAll("\\s+", " "))
                .contains("\"blank\": \"ROWING\", \"heat_source\": \"clamp\", \"made\": 120, \"spoiled\": 8,"
                        + " \"learnt\": true, \"spoil_rate\": 0.0593")
                .contains("{ \"reason\": \"ghosted\", \"pieces\": 8 }")
                .contains("{ \"temperature_c\": 196.1, \"press_s\": 150, \"pressure\": \"medium\", \"made\": 60,"
                        + " \"spoiled\": 2 }");
    }

    @Test
    void aClearDifferenceIsSaidToBeOne() throws Exception {
        order("Q1", 60, "");
        stall.publish(FIRST);
        spoil("Q1", 20);
        stall.table("press-settings.csv", SETTINGS, "ceramic,mug press,385 F,150 s,medium,yes");
        order("Q2", 60, "");
        stall.publish(FIRST.plusDays(7));
        spoil("Q2", 2);
        order("Q3", 1, "");
        assertThat(read(stall.publish(FIRST.plusDays(14)), "index.html"))
                .contains("they differ, as chance alone would do so in fewer than 1 of 100 cases only");
    }

    @Test
    void aShopThatNeverSpoiledAnythingSeesNoSuchPart() throws Exception {
        order("Q1", 40, "");
        stall.publish(FIRST);
        order("Q2", 1, "");
        Run second = stall.publish(FIRST.plusDays(7));
        assertThat(read(second, "index.html")).doesNotContain("Spoiled, and why");
        assertThat(pickList(second)).contains("Spares from your own 0 of 40 spoiled");
    }

    private void order(String number, int pieces, String source, String... more) throws IOException {
        stall.empty();
        String[] rows = new String[more.length + 2];
        rows[0] = "Order,SKU,Design,Qty,Heat Source";
        rows[1] = number + ",ROWING,tern," + pieces + "," + source;
        System.arraycopy(more, 0, rows, 2, more.length);
        stall.orders("a.csv", rows);
    }

    private void spoil(String order, int pieces) {
        stall.spoil(IntStream.rangeClosed(1, pieces)
                .mapToObj(piece -> order + "-1-" + piece)
                .toArray(String[]::new));
    }

    private String read(Run run, String file) throws IOException {
        return Files.readString(stall.outbox().resolve(run.id().toString()).resolve(file));
    }

    private String pickList(Run run) throws IOException {
        Path file = stall.outbox().resolve(run.id().toString()).resolve("pick-list.pdf");
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).replaceAll("\\s+", " ").strip();
        }
    }
}
