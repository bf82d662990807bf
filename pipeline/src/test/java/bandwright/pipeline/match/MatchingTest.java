package bandwright.pipeline.match;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Reason;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.shop.SampleBlank;
import bandwright.rules.blanks.Material;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Fit;
import bandwright.rules.designs.Placement;
import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.orders.OrderField;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MatchingTest {
    @TempDir
    Path artwork;

    private final TestShop shop = TestShop.ofTheTrust();

    @BeforeEach
    void paint() throws IOException {
        picture("heron.png", 220, 100);
        picture("tides.png", 100, 100);
    }

    @Test
    void aRowBecomesItsBlankHeatSourceDesignAndPicture() throws IOException {
        MatchedLine matched = made(TestShop.line("Q1042", "White  MUG", "Heron", 2));
        assertThat(matched.blank().sku()).isEqualTo("MUG");
        assertThat(matched.source().id()).isEqualTo("clamp");
        assertThat(matched.setting().timeSeconds()).isEqualTo(180);
        assertThat(matched.design().name()).isEqualTo("heron");
        assertThat(matched.artworks().get(0).name()).isEqualTo("heron.png");
    }

    @ParameterizedTest
    @CsvSource({
        "MUGG, heron, blank-unknown, sku, Did you mean MUG?",
        "withe mug, heron, blank-unknown, sku, Did you mean white mug?",
        "'', heron, blank-unknown, sku, Write the sku",
        "MUG, herron, design-unknown, design, Did you mean heron?",
        "MUG, tidse.png, design-unknown, design, Did you mean tides.png?",
        "MUG, '', design-unknown, design, Write the name of a design",
        "MUG, puffin, design-unknown, design, Write the name of a design",
        "MUG, lamp, artwork-missing, design, 'Put \"lamp.png\" into the artwork folder'",
        "MUG, terns, artwork-missing, design, Did you mean tides.png?",
        "MUG, torn, artwork-unreadable, design, Download or export the picture again",
        "MUG, ../secret.png, artwork-unreadable, design, Copy the picture into the artwork folder",
    })
    void aNameThatIsNotKnownHoldsTheRowWithACure(String sku, String design, String code, String field, String cure)
            throws IOException {
        shop.designs.add(TestShop.design("lamp", "lamp.png", Fit.COVER));
        shop.designs.add(TestShop.design("terns", "tidess.png", Fit.COVER));
        shop.designs.add(TestShop.design("torn", "torn.png", Fit.COVER));
        byte[] whole = Files.readAllBytes(artwork.resolve("heron.png"));
        Files.write(artwork.resolve("torn.png"), java.util.Arrays.copyOf(whole, whole.length / 2));

        HeldRow held = held(TestShop.line("Q1042", sku, design, 3));
        assertThat(held.reason().code()).isEqualTo(code);
        assertThat(held.reason().field()).isEqualTo(new OrderField(field));
        assertThat(held.reason().cure()).startsWith(cure);
        assertThat(held.reason().message()).isNotBlank().doesNotContain("{");
        assertThat(held.pieces()).isEqualTo(3);
        assertThat(held.order()).isEqualTo("Q1042");
    }

    @Test
    void aFileOfTheArtworkFolderIsADesignThatCoversTheBand() throws IOException {
        MatchedLine matched = made(TestShop.line("Q1042", "MUG", "tides.png", 1));
        assertThat(matched.design().fit()).isEqualTo(Fit.COVER);
        assertThat(matched.design().placement()).isEqualTo(Placement.ALL_ROUND);
        assertThat(matched.artworks().get(0).name()).isEqualTo("tides.png");
    }

    @Test
    void aShopThatAllowsNoFileNamesHoldsThem() throws IOException {
        shop.artworkByName = false;
        assertThat(held(TestShop.line("Q1042", "MUG", "tides.png", 1)).reason().code())
                .isEqualTo("design-unknown");
    }

    @Test
    void theOrdersOwnPictureBeatsTheDesignsButIsPlacedLikeIt() throws IOException {
        picture("orders/Q1042.png", 50, 50);
        MatchedLine matched = made(TestShop.line("Q1042", "MUG", "tide table", 1));
        assertThat(matched.artworks().get(0).name()).isEqualTo("orders/Q1042.png");
        assertThat(matched.design().fit()).isEqualTo(Fit.CONTAIN);
    }

    @ParameterizedTest
    @CsvSource({"''", "puffin"})
    void theOrdersOwnPictureNeedsNoDesign(String design) throws IOException {
        picture("orders/Q1042-1.png", 50, 50);
        MatchedLine matched = made(TestShop.line("Q1042", "MUG", design, 1));
        assertThat(matched.artworks().get(0).name()).isEqualTo("orders/Q1042-1.png");
        assertThat(matched.design().fit()).isEqualTo(Fit.COVER);
    }

    @Test
    void theOrdersOwnPictureStandsInForADesignsMissingOne() throws IOException {
        shop.designs.add(TestShop.design("lamp", "lamp.png", Fit.FILL));
        picture("orders/Q1042.png", 50, 50);
        MatchedLine matched = made(TestShop.line("Q1042", "MUG", "lamp", 1));
        assertThat(matched.design().name()).isEqualTo("lamp");
        assertThat(matched.artworks().get(0).name()).isEqualTo("orders/Q1042.png");
    }

    @ParameterizedTest
    @CsvSource({
        "MUG, choir-wide.png", // 200 x 100
        "TUMBLER, choir-square.png", // 230 x 150: ratio 1.53, nearer to 1.2 than to 2.2 as ratios go
        "COASTER, choir-square.png", // 100 x 100
    })
    void ofADesignsVariantsTheNearestInShapeIsTaken(String sku, String expected) throws IOException {
        picture("choir-tall.png", 50, 100);
        picture("choir-wide.png", 220, 100);
        picture("choir-square.png", 120, 100);
        for (String file : List.of("choir-tall.png", "choir-wide.png", "choir-square.png")) {
            shop.designs.add(TestShop.design("choir", file, Fit.COVER));
        }
        assertThat(made(TestShop.line("Q1042", sku, "choir", 1))
                        .artworks()
                        .get(0)
                        .name())
                .isEqualTo(expected);
    }

    @Test
    void theBleedCountsInTheShapeThatAVariantMustSuit() throws IOException {
        // The band is 2 : 1, but what is printed 200 x 150 mm.
        shop.blanks.add(SampleBlank.cylinder("BLED", 200, 100).bleed(25).blank());
        picture("choir-wide.png", 200, 100);
        picture("choir-square.png", 100, 100);
        for (String file : List.of("choir-wide.png", "choir-square.png")) {
            shop.designs.add(TestShop.design("choir", file, Fit.COVER));
        }
        assertThat(made(TestShop.line("Q1042", "BLED", "choir", 1))
                        .artworks()
                        .get(0)
                        .name())
                .isEqualTo("choir-square.png");
    }

    @Test
    void aVariantWithoutItsPictureHoldsTheRowAsItMightBeTheNearest() throws IOException {
        shop.designs.add(TestShop.design("heron", "heron-wide.png", Fit.COVER));
        assertThat(held(TestShop.line("Q1042", "MUG", "heron", 1)).reason().code())
                .isEqualTo("artwork-missing");
    }

    @ParameterizedTest
    @CsvSource({"oven, oven", "OVEN, oven", "the  Oven, oven", "'', clamp"})
    void aRowsWishForAHeatSourceIsObeyed(String wish, String source) throws IOException {
        assertThat(made(wishing("MUG", wish)).source().id()).isEqualTo(source);
    }

    @Test
    void aWishThatCannotBeMetIsNeverReplaced() throws IOException {
        HeldRow glass = held(wishing("GLASS", "clamp"));
        assertThat(glass.reason().code()).isEqualTo("heat-source-refused");
        assertThat(glass.reason().field()).isEqualTo(OrderField.HEAT_SOURCE);
        assertThat(glass.reason().message()).contains("clamp", "glass", "mug press");
        assertThat(held(wishing("MUG", "ovne")).reason().cure()).isEqualTo("Did you mean oven?");
        assertThat(held(wishing("MUG", "kiln at the boathouse")).reason().cure())
                .contains("clamp, oven, plate");
    }

    @Test
    void aBlankThatNothingTakesSaysWhyOfEachHeatSource() throws IOException {
        shop.blanks.add(TestShop.cylinder("CUP", Material.POLYMER, 240, 100, 30, List.of()));
        shop.settings.add(TestShop.setting(Material.POLYMER, HeatKind.OVEN, 0, 0, Allowed.IF_LISTED));
        HeldRow held = held(TestShop.line("Q1042", "CUP", "heron", 1));
        assertThat(held.reason().code()).isEqualTo("no-heat-source");
        assertThat(held.reason().message())
                .contains("clamp: press-settings.csv has no temperature and time for CUP (polymer, mug press)")
                .contains("oven: press-settings.csv says \"if listed\" for polymer (oven)")
                .contains("plate: round blanks don't go into this kind of heat source (flat press)");
    }

    @Test
    void glassGoesIntoTheOvenWhereTheClampMayNotPressIt() throws IOException {
        assertThat(made(TestShop.line("Q1042", "GLASS", "heron", 1)).source().id())
                .isEqualTo("oven");
    }

    @ParameterizedTest
    @CsvSource({"MUG, OPPOSITE", "MUG, TWO_SIDED", "COASTER, OPPOSITE", "COASTER, TWO_SIDED"})
    void onePictureGoesIntoEveryPlacement(String sku, Placement placement) throws IOException {
        shop.designs.add(TestShop.design("tern", "heron.png", Fit.COVER, placement, 50, 50, Optional.empty()));
        assertThat(made(TestShop.line("Q1042", sku, "tern", 1)).design().placement())
                .isEqualTo(placement);
    }

    @Test
    void aTwoSidedDesignBringsBothPicturesTheLeftOneFirst() throws IOException {
        shop.designs.add(twoSided("heron.png", "tides.png"));
        assertThat(made(TestShop.line("Q1042", "MUG", "pair", 1)).artworks())
                .extracting(ArtworkFile::name)
                .containsExactly("heron.png", "tides.png");
    }

    @Test
    void onAFlatOnlyTheFirstPictureIsPrinted() throws IOException {
        shop.designs.add(twoSided("heron.png", "tides.png"));
        assertThat(made(TestShop.line("Q1042", "COASTER", "pair", 1)).artworks())
                .extracting(ArtworkFile::name)
                .containsExactly("heron.png");
    }

    @Test
    void aMissingSecondPictureIsHeldByItsName() throws IOException {
        shop.designs.add(twoSided("heron.png", "puffins.png"));
        Reason reason = held(TestShop.line("Q1042", "MUG", "pair", 1)).reason();
        assertThat(reason.code()).isEqualTo("artwork-missing");
        assertThat(reason.message() + reason.cure()).contains("puffins.png");
    }

    @Test
    void theOrdersOwnPictureStandsOnBothSides() throws IOException {
        shop.designs.add(twoSided("heron.png", "tides.png"));
        picture("orders/Q1042.png", 50, 50);
        assertThat(made(TestShop.line("Q1042", "MUG", "pair", 1)).artworks())
                .extracting(ArtworkFile::name)
                .containsExactly("orders/Q1042.png");
    }

    private static Design twoSided(String left, String right) {
        Optional<String> second = Optional.of(right);
        return new Design("pair", left, second, Placement.TWO_SIDED, Fit.COVER, 50, 50, Optional.empty(), "");
    }

    @Test
    void messagesStayOnOneLineHoweverOddTheCell() throws IOException {
        String odd = "line\none\u2028two\u202Ethree " + "x".repeat(5000);
        HeldRow held = held(TestShop.line("Q1042", odd, odd, 1));
        assertThat(held.reason().message()).hasSizeLessThan(200).doesNotContain("\n", "\u2028", "\u202E");
    }

    @Test
    void everyLineEndsOnceInTheOrderOfItsRows() throws IOException {
        List<OrderLine> lines = List.of(
                TestShop.line("Q1", "MUG", "heron", 1),
                TestShop.line("Q2", "MUG", "puffin", 2),
                TestShop.line("Q3", "GLASS", "heron", 3),
                TestShop.line("Q4", "PLATE", "heron", 4));
        Split<MatchedLine> split = Matching.each(lines, shop.rules(), ArtworkShelf.open(artwork));
        assertThat(split.made()).extracting(matched -> matched.line().order()).containsExactly("Q1", "Q3");
        assertThat(split.held()).extracting(HeldRow::order).containsExactly("Q2", "Q4");
    }

    private static OrderLine wishing(String sku, String wish) {
        return TestShop.line("", "Q1042", "1", sku, "heron", 1, wish, Optional.empty());
    }

    private MatchedLine made(OrderLine line) throws IOException {
        Split<MatchedLine> split = match(line);
        assertThat(split.held()).as("held").isEmpty();
        return split.made().get(0);
    }

    private HeldRow held(OrderLine line) throws IOException {
        Split<MatchedLine> split = match(line);
        assertThat(split.made()).as("made").isEmpty();
        return split.held().get(0);
    }

    private Split<MatchedLine> match(OrderLine line) throws IOException {
        return Matching.each(List.of(line), shop.rules(), ArtworkShelf.open(artwork));
    }

    private void picture(String name, int width, int height) throws IOException {
        Path file = artwork.resolve(name);
        Files.createDirectories(file.getParent());
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    }
}
