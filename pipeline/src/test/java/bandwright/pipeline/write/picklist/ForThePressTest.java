package bandwright.pipeline.write.picklist;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.write.papers.SmallMonday;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is laid beside the press before it is switched on. */
final class ForThePressTest {
    private static final String BLANKS = """
            sku,name,material,shape,circumference,top_diameter,bottom_diameter,height,width,outline,handle_width,heat_sources
            CHOIR,Choir mug,ceramic,cylinder,260 mm,,,95 mm,,,22 mm,clamp
            TIDES,Tides tumbler,metal,cylinder,230 mm,,,200 mm,,,,oven
            CONE,Lamp cone,ceramic,cone,,90 mm,62 mm,101 mm,,,22 mm,oven
            TILE,Tern tile,ceramic,flat,,,,108 mm,108 mm,rectangle,,flat
            TRAY,Tern tray,wood,flat,,,,95 mm,150 mm,rectangle,,oven
            """;
    private static final String SETTINGS = """
            material,heat_kind,temperature,time,allowed
            ceramic,mug press,190 C,180 s,yes
            ceramic,oven,190 C,900 s,yes
            metal,oven,190 C,600 s,yes
            wood,oven,190 C,600 s,yes
            ceramic,flat press,190 C,300 s,yes
            """;

    @TempDir
    Path folder;

    private String list(String unit, String orders) throws IOException {
        SmallMonday monday = new SmallMonday(folder)
                .table("blanks.csv", BLANKS)
                .table("press-settings.csv", SETTINGS)
                .table("products.csv", "site,product,blank\n")
                .table("stock.csv", "sku,counted_on,count\n")
                .table("shop.csv", "key,value\nunit," + unit + "\ncrop_hold,100 %\nppi_hold,1\n");
        String text = String.join(" ", monday.pages(thumbnails -> new PickList(), "Order,SKU,Design,Qty\n" + orders));
        return text.substring(text.indexOf("For the press"), text.indexOf("Short"));
    }

    /**
     * 260 less 22 and twice 12.7 are 212.6 round and 95 up: with 10 mm on all sides 232.6 x 115, in steps of 5 mm 235 x
     * 115. Tape: 2 x (95 + 20) a piece, 24 pieces 5.52 m.
     */
    @Test
    void protectivePaperGoesByTheBandAndTapeByTheHandle() throws IOException {
        assertThat(list("mm", "Q1,CHOIR,tern,14\nQ2,CHOIR,tern,10\n"))
                .contains("24 protective paper, 235 mm x 115 mm", "6 m heat tape", "about 10 mm over the picture");
    }

    /** 232.6 and 115 mm are 9.16 and 4.53 in; 5.52 m are 18.1 ft. */
    @Test
    void aShopThatMeasuresInInchesBuysFeet() throws IOException {
        assertThat(list("in", "Q1,CHOIR,tern,24\n"))
                .contains("24 protective paper, 9 1/4 in x 4 3/4 in", "19 ft heat tape");
    }

    /** One strip of 200 + 20 along the seam: five of them 1.1 m. */
    @Test
    void aTumblerInTheOvenTakesASleeveOfItsOwnSizeAndOneStrip() throws IOException {
        assertThat(list("mm", "Q1,TIDES,tern,5\n"))
                .contains("5 shrink sleeve for a blank 230 mm round and 200 mm high", "2 m heat tape")
                .doesNotContain("protective paper,");
    }

    /** Pi times 90 at the rim. */
    @Test
    void aConesSleeveGoesByItsWiderEnd() throws IOException {
        assertThat(list("mm", "Q1,CONE,tern,1\n")).contains("1 shrink sleeve for a blank 283 mm round and 101 mm high");
    }

    /** 108 + 20 on both sides, in steps of 5 mm; two corners of 40 mm: 25 pieces 2 m, not 3. */
    @Test
    void flatBlanksTakePaperUnderThePlateAndTwoCornersOfTape() throws IOException {
        assertThat(list("mm", "Q1,TILE,tern,25\n")).contains("25 protective paper, 130 mm x 130 mm", "2 m heat tape");
        assertThat(list("mm", "Q1,TRAY,tern,2\n")).contains("2 shrink sleeve for a flat blank 150 mm x 95 mm");
    }

    @Test
    void sizesAreAddedUpOverOrdersAndBlanks() throws IOException {
        assertThat(list("mm", "Q1,CHOIR,tern,1\nQ2,TILE,tern,2\nQ3,CHOIR,tern,3\nQ4,TIDES,tern,1\n"))
                .containsSubsequence(
                        "2 protective paper, 130 mm x 130 mm",
                        "4 protective paper, 235 mm x 115 mm",
                        "1 shrink sleeve for a blank 230 mm round");
    }
}
