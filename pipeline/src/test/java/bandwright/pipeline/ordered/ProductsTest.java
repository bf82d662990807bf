package bandwright.pipeline.ordered;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.shop.Stall;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a listing on a selling site means: blanks, designs and how many. */
final class ProductsTest {
    private static final String PRODUCTS = "site,product,variation,blank,design,count,texts,note";
    private static final String ORDERS = "Order,Item,Variation,SKU,Design,Qty";

    @TempDir
    private Path folder;

    private Stall stall = new Stall(Path.of(""));

    @BeforeEach
    void open() throws IOException {
        stall = new Stall(folder);
        stall.table(
                "products.csv",
                PRODUCTS,
                ",Tern mug,,MUG-11-W,tern,,,",
                ",Tern mug,Size=15 oz,MUG-15-W,tern,,,",
                ",Tern mug,Size=15 oz|Handle=Pink,MUG-11-PK,tern,,,",
                ",Keepers' pair,,MUG-11-W,lamp,,,",
                ",keepers'  PAIR,,MUG-15-W,tern,2,,",
                ",Choir set of 4,,MUG-11-W,choir,4,,",
                ",Tide table,,,,,,a booklet",
                ",Tea and tides,,MUG-11-W,tern,,,",
                ",Tea and tides,,,,,,the tea",
                ",Any mug,Size=11 oz,MUG-11-W,,,,",
                ",Any mug,Handle=Pink,MUG-11-PK,,,,",
                ",LAMP-11-TWO,,MUG-11-W,lamp,2,,");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Tern mug    |                             | MUG-11-W",
                " tern  MUG  | Size: 11 oz                 | MUG-11-W",
                "Tern mug    | Size: 15 oz                 | MUG-15-W",
                "Tern mug    | size=15 OZ                  | MUG-15-W",
                "Tern mug    | Handle: Blue / Size: 15 oz  | MUG-15-W",
                "Tern mug    | Size: 15 oz / Handle: Pink  | MUG-11-PK",
                "Tern mug    | 'Handle: Pink, Size: 15 oz' | MUG-11-PK",
                "Tern mug    | Handle: Pink;Size=15 oz     | MUG-11-PK",
                "Tern&#32;mug| Size&#58; 15 oz             | MUG-15-W",
            })
    void theRowWithTheMostConditionsThatHoldWins(String product, String variation, String blank) throws Exception {
        String cell = variation == null ? "" : '"' + variation + '"';
        stall.orders("fair.csv", ORDERS, "Q1," + product + "," + cell + ",,,1");
        assertThat(stall.story()).containsExactly("made Q1-1-1 " + blank + " tern");
    }

    @Test
    void rowsWithEqualKeysAreASetAndItsPiecesAreCountedCopyByCopy() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,Keepers' pair,,,,2");
        assertThat(stall.story())
                .containsExactlyInAnyOrder(
                        "made Q1-1-1 MUG-11-W lamp",
                        "made Q1-1-2 MUG-15-W tern",
                        "made Q1-1-3 MUG-15-W tern",
                        "made Q1-1-4 MUG-11-W lamp",
                        "made Q1-1-5 MUG-15-W tern",
                        "made Q1-1-6 MUG-15-W tern");
    }

    @Test
    void aSetOfFourIsFourPiecesACopy() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,Choir set of 4,,,,3");
        assertThat(stall.story()).hasSize(12).contains("made Q1-1-12 MUG-11-W choir");
    }

    @Test
    void aSkuThatNamesNoBlankIsLookedUpAsAListing() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,Whatever the site calls it,,lamp-11-two,,1");
        assertThat(stall.story()).containsExactly("made Q1-1-1 MUG-11-W lamp", "made Q1-1-2 MUG-11-W lamp");
    }

    @Test
    void theRowsOwnSkuAndDesignGoBeforeTheListings() throws Exception {
        stall.orders(
                "fair.csv",
                ORDERS,
                "Q1,Tern mug,,MUG-15-W,lamp,1",
                "Q2,Tern mug,,MUG-15-W,,1",
                "Q3,Tern mug,,,lamp,1",
                "Q4,No such listing,,MUG-15-W,lamp,1");
        assertThat(stall.story())
                .containsExactly(
                        "made Q1-1-1 MUG-15-W lamp",
                        "made Q2-1-1 MUG-15-W tern",
                        "made Q3-1-1 MUG-11-W lamp",
                        "made Q4-1-1 MUG-15-W lamp");
    }

    @Test
    void whatIsNoDrinkwareIsSkippedAndTheRestOfItsSetIsMade() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,Tide table,,,,3", "Q2,Tea and tides,,,,2");
        assertThat(stall.story())
                .containsExactly(
                        "made Q2-1-1 MUG-11-W tern",
                        "made Q2-1-3 MUG-11-W tern",
                        "skipped Q1 x3 not-drinkware",
                        "skipped Q2 x2 not-drinkware");
        assertThat(bandwright.pipeline.Conservation.check(stall.run())).isEmpty();
    }

    @Test
    void aTieIsHeldNamingBothRows() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,Any mug,Size: 11 oz / Handle: Pink,,tern,1");
        HeldRow held = stall.held();
        assertThat(held.reason().code()).isEqualTo("product-tie");
        assertThat(held.reason().message()).contains("products.csv", "Rows 11 and 12");
        assertThat(held.column()).isEqualTo("Item");
    }

    @Test
    void anUnknownListingIsHeldWithTheNearestAndTheVeryRowToAdd() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,Turn mug,\"Size: 15 oz / Lid: tight, clear\",,,2");
        HeldRow held = stall.held();
        assertThat(held.reason().code()).isEqualTo("product-unknown");
        assertThat(held.pieces()).isEqualTo(2);
        assertThat(held.reason().message()).contains("Turn mug", "Size: 15 oz");
        assertThat(held.reason().cure())
                .startsWith("Did you mean \"Tern mug\" (row 2)?")
                .endsWith(": ,Turn mug,Size=15 oz|Lid=tight,SKU,DESIGN,1,,");
    }

    @Test
    void theRowToAddMendsTheOrder() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,\"Storm \"\"lamp\"\", large\",Size: 15 oz,,,1");
        String cure = stall.held().reason().cure();
        String row = cure.substring(cure.indexOf(": ") + 2)
                .replace("SKU", "MUG-15-W")
                .replace("DESIGN", "lamp");
        stall.table("products.csv", PRODUCTS, row);
        assertThat(stall.story()).containsExactly("made Q1-1-1 MUG-15-W lamp");
    }

    @Test
    void theRowToAddIsRefusedAsLongAsNobodySaysWhichBlank() throws Exception {
        stall.table("products.csv", PRODUCTS, ",Turn mug,,SKU,DESIGN,1,,");
        assertThat(org.assertj.core.api.Assertions.catchThrowable(stall::rules))
                .isInstanceOf(bandwright.rules.RulebookFaults.class);
    }

    @Test
    void aListingWhoseVariationsAllDifferNamesTheNearestOfThem() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,Any mug,Size: 20 oz,,tern,1");
        assertThat(stall.held().reason().cure()).startsWith("Did you mean \"Any mug, Size=11 oz\" (row 11)?");
    }

    @Test
    void aListingOfOneSiteIsNotAnothers() throws Exception {
        stall.table("sites.csv", "site,files", "Fair,fair*", "Web,web*", ",");
        stall.table("products.csv", PRODUCTS, ",Tern mug,,MUG-11-W,tern,,,", "Fair,Tern mug,,MUG-15-W,tern,,,");
        stall.orders("fair.csv", ORDERS, "Q1,Tern mug,,,,1").orders("web.csv", ORDERS, "Q2,Tern mug,,,,1");
        assertThat(stall.story()).containsExactly("made Q1-1-1 MUG-15-W tern", "made Q2-1-1 MUG-11-W tern");
    }

    @Test
    void aSetWithOneUnfitMugWaitsWhole() throws Exception {
        stall.table("designs.csv", "design,artwork", "lamp,storm-lamp.png", "gone,gone.png");
        stall.table("products.csv", PRODUCTS, ",Pair,,MUG-11-W,lamp,,,", ",Pair,,MUG-15-W,gone,,,");
        stall.orders("fair.csv", ORDERS, "Q1,Pair,,,,2");
        assertThat(stall.story()).containsExactly("held Q1 x4 artwork-missing");
    }
}
