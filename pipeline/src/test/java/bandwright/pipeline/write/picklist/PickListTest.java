package bandwright.pipeline.write.picklist;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.write.papers.SmallMonday;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody with a basket reads off the pick list, shelf by shelf. */
final class PickListTest {
    private static final String BLANKS = """
            sku,name,material,shape,top_diameter,height,handle_width,base_colour,finish,backing,parts,shelf
            LAMP-9,Storm lamp mug,ceramic,cylinder,82 mm,95 mm,22 mm,#FFFFFF,gloss,opaque,,
            LAMP-10,Tall storm lamp mug,ceramic,cylinder,82 mm,95 mm,22 mm,#FFFFFF,gloss,opaque,,
            TERN-1,Tern mug,ceramic,cylinder,82 mm,95 mm,22 mm,#FFFFFF,gloss,opaque,saucer|spoon,A10
            TERN-2,Choir mug,ceramic,cylinder,82 mm,95 mm,22 mm,#FFFFFF,gloss,opaque,,A2
            TERN-3,Rowing mug,ceramic,cylinder,82 mm,95 mm,22 mm,#FFFFFF,gloss,opaque,,b1
            """;
    private static final String ORDERS = """
            Order,SKU,Design,Qty
            Q1,LAMP-10,tern,1
            Q1,TERN-3,tern,10
            Q1,LAMP-9,tern,1
            Q2,TERN-1,tern,40
            Q2,TERN-2,tern,4
            Q3,TERN-2,lamp,6
            """;
    private static final String STOCK = """
            sku,counted_on,count,reorder_at,pack_size
            TERN-1,2026-02-27,41,0,6
            TERN-2,2026-02-27,8,4,6
            TERN-3,2026-02-27,100,24,6
            """;

    @TempDir
    Path folder;

    private String list(String shop) throws IOException {
        SmallMonday monday = new SmallMonday(folder)
                .table("blanks.csv", BLANKS)
                .table("stock.csv", STOCK)
                .table("shop.csv", "key,value,note\n" + shop);
        return String.join(" ", monday.pages(thumbnails -> new PickList(), ORDERS));
    }

    @Test
    void shelvesFollowAsPeopleCountThemAndBlanksWithoutOneComeLastBySku() throws IOException {
        assertThat(list("")).containsSubsequence("A2 TERN-2", "A10 TERN-1", "b1 TERN-3", "- LAMP-9", "- LAMP-10");
    }

    @Test
    void aBlankOfTwoOrdersIsOneLineOfPiecesSparesAndTheirSum() throws IOException {
        assertThat(list(""))
                .contains("A2 TERN-2 10 1 11", "A10 TERN-1 40 3 43", "b1 TERN-3 10 1 11", "saucer, spoon")
                .contains("62 pieces for 3 orders, of 5 kinds of blank", "5 spare", "67 to take");
    }

    @Test
    void aShortShelfSaysWhetherPiecesOrOnlySparesAreMissing() throws IOException {
        String text = list("");
        String shortPart = text.substring(text.indexOf("Short"), text.indexOf("Reorder"));
        assertThat(shortPart)
                .containsSubsequence("TERN-2", "8 by the last count: 2 pieces can't be made")
                .containsSubsequence("TERN-1", "41 by the last count: all pieces can be made, but 2 of the spares")
                .doesNotContain("TERN-3");
        assertThat(text.substring(text.indexOf("Reorder")))
                .containsSubsequence("TERN-2", "Order 2 x 6 = 12: 0 are left")
                .doesNotContain("TERN-1", "TERN-3");
    }

    @Test
    void aShopThatDoesNotCountSeesNeitherShortNorReorder() throws IOException {
        assertThat(list("stock,ignore,\n")).contains("TERN-2").doesNotContain("Short", "Reorder", "count");
    }

    @Test
    void aShopThatSpoilsNothingCarriesNoSpares() throws IOException {
        assertThat(list("spoil_rate,0 %,\n")).contains("A10 TERN-1 40 0 40", "62 to take");
    }
}
