package bandwright.pipeline.size;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.held.Reason;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.TestShop;
import bandwright.pipeline.owed.OwedLine;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.shop.PaintedPng;
import bandwright.pipeline.shop.SampleBlank;
import bandwright.rules.blanks.Finish;
import bandwright.rules.designs.Align;
import bandwright.rules.designs.Anchor;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Fit;
import bandwright.rules.designs.TextField;
import bandwright.rules.orders.OrderField;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The trust's mug of 200 x 100 mm in several colours, with a lamp that leaves the lower half of the band bare. */
class ColourLawTest {
    private static final Rgb PINK = new Rgb(245, 182, 200);
    private static final Rgb BLACK = new Rgb(0, 0, 0);
    private static final int YELLOW_PIXEL = 0xFF_FFFF00;

    private final TestShop shop = TestShop.ofTheTrust();
    private ArtworkFile lamp = TestShop.artwork("unpainted.png", 1600, 800);

    @TempDir
    private Path folder;

    @BeforeEach
    void paint() {
        lamp = PaintedPng.of(folder, "lamp.png", 1600, 800, (x, y) -> y < 400 ? YELLOW_PIXEL : 0);
        blank("PINK", SampleBlank.cylinder("PINK", 240, 100).baseColour(PINK));
        blank("WHITE", SampleBlank.cylinder("WHITE", 240, 100));
        blank("NIGHT", SampleBlank.cylinder("NIGHT", 240, 100).baseColour(new Rgb(32, 32, 36)));
    }

    @Test
    void onWhiteNothingShiftsAndNoPictureIsLookedAt() {
        lamp = TestShop.artwork("gone.png", 1600, 800);
        assertThat(made("WHITE").colourShift()).contains(new BigDecimal("0.0"));
    }

    @Test
    void aShiftAboveTheLimitIsNotedWithTheBaseInPlainWords() {
        Unit unit = made("PINK");
        assertThat(unit.colourShift().orElseThrow()).isGreaterThan(new BigDecimal("5.0"));
        assertThat(message(unit, "colour"))
                .contains("pink base", unit.colourShift().orElseThrow().toPlainString())
                .doesNotContain("nearly one", "less certain");
    }

    @Test
    void theLimitItselfIsNotBeyondIt() {
        shop.colourNote = made("PINK").colourShift().orElseThrow().doubleValue();
        assertThat(codes(made("PINK"))).doesNotContain("colour");
        shop.colourNote -= 0.1;
        assertThat(codes(made("PINK"))).contains("colour");
    }

    @Test
    void coloursThatBecomeOneAreNamed() {
        blank("SUN", SampleBlank.cylinder("SUN", 240, 100).baseColour(new Rgb(255, 224, 0)));
        shop.colourNote = 1;
        assertThat(message(made("SUN"), "colour")).contains("yellow (#FFFF00)", "white (#FFFFFF)", "nearly one");
    }

    @Test
    void onGlitterItIsLessCertain() {
        blank(
                "GLITTER",
                SampleBlank.cylinder("GLITTER", 240, 100).baseColour(PINK).finish(Finish.GLITTER));
        assertThat(message(made("GLITTER"), "colour")).contains("less certain");
    }

    @Test
    void aColourChangingBlankIsJudgedHot() {
        blank(
                "MAGIC",
                SampleBlank.cylinder("MAGIC", 240, 100)
                        .baseColour(new Rgb(32, 32, 36))
                        .hotColour(Rgb.WHITE)
                        .finish(Finish.COLOUR_CHANGING));
        assertThat(made("MAGIC").colourShift()).contains(new BigDecimal("0.0"));
    }

    @Test
    void theWordsSayWhichOfTwoColoursIsJudged() {
        blank("MAGIC", SampleBlank.cylinder("MAGIC", 240, 100).hotColour(PINK));
        assertThat(message(made("MAGIC"), "colour")).startsWith("The pink base when it is hot changes");
    }

    @Test
    void aPictureThatCannotBeLookedAtIsNotJudged() {
        lamp = TestShop.artwork("gone.png", 1600, 800);
        assertThat(made("PINK").colourShift()).isEmpty();
        assertThat(codes(made("PINK"))).doesNotContain("colour");
    }

    @Test
    void yellowLettersVanishOnThePinkBase() {
        text(new Rgb(255, 255, 0), 70);
        Reason reason = held("PINK");
        assertThat(reason.code()).isEqualTo("contrast-low");
        assertThat(reason.message())
                .startsWith("The yellow letters of \"name\" will vanish on the pink base: 1.07 to 1")
                .contains("from 2.");
        assertThat(reason.cure()).contains("darker colour", "texts.csv", "lighter blank");
        assertThat(reason.field()).isEqualTo(OrderField.SKU);
    }

    @Test
    void whiteLettersOverNoPictureAreHeldOnAWhiteBlankToo() {
        text(Rgb.WHITE, 70);
        Reason reason = held("WHITE");
        assertThat(reason.message()).contains("white letters", "white base", ": 1 to 1");
        assertThat(reason.field()).isEqualTo(OrderField.DESIGN);
        assertThat(reason.cure()).doesNotContain("lighter blank");
    }

    @Test
    void lettersThatDrownInThePictureAreHeldOnAWhiteBlank() {
        text(new Rgb(255, 240, 90), 10);
        assertThat(held("WHITE").message()).contains("yellow of the print");
    }

    @Test
    void noInkIsReadOnADarkBlank() {
        text(new Rgb(255, 255, 0), 70);
        assertThat(held("NIGHT").cure()).contains("No ink stands out there");
    }

    @Test
    void lettersThatStandOutLittleAreNotedAndPrinted() {
        text(new Rgb(240, 130, 40), 70);
        assertThat(message(made("WHITE"), "contrast")).contains("orange letters of \"name\"", "white base", "under 3.");
    }

    @Test
    void twoTextsThatStandOutLittleAreOneNote() {
        text(new Rgb(240, 130, 40), 70);
        text(new Rgb(90, 168, 224), 52);
        Unit unit = made("WHITE");
        assertThat(codes(unit)).containsOnlyOnce("contrast");
        assertThat(message(unit, "contrast")).contains("orange letters", "sky blue letters");
    }

    @Test
    void lettersThatStandOutAreNotMentioned() {
        text(BLACK, 70);
        assertThat(codes(made("PINK"))).doesNotContain("contrast");
        assertThat(codes(made("WHITE"))).doesNotContain("contrast");
    }

    /** A name across 160 x 16 mm, so far below the upper edge. */
    private void text(Rgb colour, double yPercent) {
        shop.texts.add(new TextField(
                "lamp",
                "name",
                Optional.empty(),
                Anchor.BAND,
                10,
                yPercent,
                80,
                16,
                1,
                "sans",
                Length.mm(20),
                Length.mm(2),
                colour,
                Align.CENTRE,
                Optional.empty(),
                Locale.ROOT,
                OptionalInt.empty(),
                false,
                "Marguerite of the lamp",
                ""));
    }

    private void blank(String sku, SampleBlank mug) {
        shop.blanks.removeIf(other -> other.sku().equals(sku));
        shop.blanks.add(mug.handle(30).blank());
    }

    private Split<Unit> size(String sku) {
        Design design = TestShop.design("lamp", lamp.name(), Fit.CONTAIN);
        MatchedLine line = shop.matched(TestShop.line("Q1042", sku, "lamp", 1), sku, "clamp", design, lamp);
        return Sizing.each(List.of(OwedLine.whole(line)), shop.rules(), new Sights(), Optional.empty(), Set.of());
    }

    private Unit made(String sku) {
        Split<Unit> split = size(sku);
        assertThat(split.held()).isEmpty();
        return split.made().get(0);
    }

    private Reason held(String sku) {
        Split<Unit> split = size(sku);
        assertThat(split.made()).isEmpty();
        return split.held().get(0).reason();
    }

    private static List<String> codes(Unit unit) {
        return unit.notes().stream().map(Note::code).toList();
    }

    private static String message(Unit unit, String code) {
        return unit.notes().stream()
                .filter(note -> note.code().equals(code))
                .map(Note::message)
                .findFirst()
                .orElseThrow();
    }
}
