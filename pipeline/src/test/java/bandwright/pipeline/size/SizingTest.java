package bandwright.pipeline.size;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Reason;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.TestShop;
import bandwright.pipeline.owed.OwedLine;
import bandwright.pipeline.pixels.Sights;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Material;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Fit;
import bandwright.rules.designs.Placement;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.orders.OrderField;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The trust's mug on its clamp: 240 - 30 - 2 x 5 = 200 mm around, 100 mm up. */
class SizingTest {
    private final TestShop shop = TestShop.ofTheTrust();

    @Test
    void aRowBecomesAsManyUnitsAsPiecesThatShareOneTransfer() {
        List<Unit> units = made(mug("Q1042", 3, 2000, 1000, Fit.COVER));
        assertThat(units).extracting(Unit::id).containsExactly("Q1042-1-1", "Q1042-1-2", "Q1042-1-3");
        assertThat(units).extracting(Unit::piece).containsExactly(1, 2, 3);
        assertThat(units.get(2).transfer()).isSameAs(units.get(0).transfer());
        assertThat(units.get(0).transfer().width()).isEqualTo(Length.mm(200));
        assertThat(units.get(0).transfer().height()).isEqualTo(Length.mm(100));
        assertThat(units.get(0).ppi()).hasValue(254);
    }

    @Test
    void rowsThatAskForTheSameShareOneTransferToo() {
        List<Unit> units = made(mug("Q1", 1, 2000, 1000, Fit.COVER), mug("Q2", 1, 2000, 1000, Fit.COVER));
        assertThat(units.get(0).transfer()).isSameAs(units.get(1).transfer());
    }

    /** The mug's 200 mm are 7.874 in: 788 pixels give 100.08 an inch, 1575 give 200.03. */
    @ParameterizedTest
    @CsvSource({"787, held", "788, ppi", "1574, ppi", "1575, fine"})
    void tooFewPixelsAreNotedThenHeld(int wide, String outcome) {
        Split<Unit> split = size(mug("Q1042", 2, wide, wide / 2, Fit.CONTAIN));
        if (outcome.equals("held")) {
            assertThat(reason(split).code()).isEqualTo("ppi-low");
            assertThat(reason(split).message()).contains("99", "MUG", "100");
            assertThat(reason(split).cure()).contains("788 x 394").contains("1575 x 787");
            assertThat(split.held().get(0).pieces()).isEqualTo(2);
            return;
        }
        assertThat(codes(split))
                .isEqualTo(outcome.equals("ppi") ? List.of("ppi", "not-confirmed") : List.of("not-confirmed"));
    }

    /** A square picture that covers 2 : 1 loses exactly half. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.9, fine", "0.4999, 0.5, crop", "0.3, 0.4999, held"})
    void whatIsCutOffIsNotedThenHeldStrictlyBeyondTheLimit(double note, double hold, String outcome) {
        shop.cropNote = note;
        shop.cropHold = hold;
        Split<Unit> split = size(mug("Q1042", 1, 2000, 2000, Fit.COVER));
        if (outcome.equals("held")) {
            assertThat(reason(split).code()).isEqualTo("crop-large");
            assertThat(reason(split).message()).contains("50 %", "49.99 %");
            return;
        }
        assertThat(codes(split))
                .isEqualTo(outcome.equals("crop") ? List.of("crop", "not-confirmed") : List.of("not-confirmed"));
    }

    @Test
    void aCropOfExactlyTheLimitIsNotBeyondIt() {
        // 1 - 850 / 1000: a hair more than 0.15 in binary.
        shop.blanks.add(TestShop.cylinder("MUG-85", Material.CERAMIC, 140, 85, 30, List.of()));
        Split<Unit> split =
                size(line("Q1", 1, "MUG-85", "clamp", TestShop.artwork("heron.png", 1000, 1000), Fit.COVER));
        assertThat(codes(split)).containsExactly("not-confirmed");
    }

    /** Filled into 2 : 1, a picture of 2000 x h pixels is stretched by 1000 / h - 1 or h / 1000 - 1. */
    @ParameterizedTest
    @CsvSource({"1030, fine", "1031, stretch", "1100, stretch", "1101, held", "970, stretch", "900, held"})
    void aStretchIsNotedThenHeldStrictlyBeyondTheLimit(int high, String outcome) {
        Split<Unit> split = size(mug("Q1042", 1, 2000, high, Fit.FILL));
        if (outcome.equals("held")) {
            assertThat(reason(split).code()).isEqualTo("stretch-large");
            assertThat(reason(split).field()).isEqualTo(OrderField.DESIGN);
            return;
        }
        assertThat(codes(split))
                .isEqualTo(outcome.equals("stretch") ? List.of("stretch", "not-confirmed") : List.of("not-confirmed"));
    }

    @Test
    void aBandThatAPressCutsShortSaysByHowMuch() {
        shop.sources.set(0, TestShop.source("clamp", HeatKind.MUG_PRESS, 1, 0, Optional.of(Length.mm(90))));
        List<Unit> units = made(mug("Q1042", 1, 2000, 900, Fit.COVER));
        assertThat(units.get(0).notes())
                .extracting(Note::message)
                .contains("press limits height: 90.00 of 100.00 mm; the oven would not");
    }

    @Test
    void nothingLeftToPrintOnIsHeld() {
        shop.blanks.add(TestShop.cylinder("STUB", Material.CERAMIC, 240, 100, 235, List.of()));
        Reason reason = reason(size(line("Q1", 1, "STUB", "clamp", TestShop.artwork("h.png", 900, 900), Fit.COVER)));
        assertThat(reason.code()).isEqualTo("band-empty");
        assertThat(reason.cure()).contains("STUB", "clamp");
    }

    /** A handle of 140 mm leaves, with what the clamp needs beside it, 90 of 240 mm: nothing of it is a quarter turn from the middle and beside the handle. */
    @ParameterizedTest
    @EnumSource(
            value = Placement.class,
            names = {"HANDLE_LEFT", "HANDLE_RIGHT", "TWO_SIDED"})
    void aBandOfLessThanHalfTheWallIsHeldForAPictureBesideTheHandle(Placement placement) {
        shop.blanks.add(TestShop.cylinder("STUB", Material.CERAMIC, 240, 100, 140, List.of()));
        ArtworkFile artwork = TestShop.artwork("h.png", 900, 900);
        Design design = TestShop.design("heron", "h.png", Fit.COVER, placement, 50, 50, Optional.empty());
        MatchedLine line = shop.matched(TestShop.line("Q1", "STUB", "heron", 1), "STUB", "clamp", design, artwork);
        Reason reason = reason(size(line));
        assertThat(reason.code()).isEqualTo("band-empty");
        assertThat(reason.message()).contains("heron", placement.word(), "90.00 of 240.00 mm");
        assertThat(reason.cure()).contains("opposite", "STUB", "clamp");
    }

    /** 276 mm at the rim, 62 mm at the foot, 101 mm high: the larger arc is 1.1725 times the one half-way up. */
    @Test
    void aConesPictureIsAsFineAsOnItsLargerArc() {
        Form cone = new Form.Cone(Length.mm(276), Length.mm(62), Length.mm(101));
        shop.blanks.add(TestShop.blank("LATTE", Material.CERAMIC, cone, 0, 0, List.of(), 1));
        Unit unit = made(line("Q1", 1, "LATTE", "oven", TestShop.artwork("h.png", 2000, 900), Fit.COVER))
                .get(0);
        // 2000 pixels on the rim's 276 mm, not on the 235.39 mm half-way up: 184 an inch, not 215.
        assertThat(unit.ppi()).hasValue(184);
        assertThat(unit.transfer().sector()).isPresent();
        assertThat(unit.transfer().width()).isEqualTo(unit.band().around());
        assertThat(unit.transfer().box().width().mm())
                .isGreaterThan(unit.band().around().mm());
        assertThat(unit.notes()).extracting(Note::message).anyMatch(said -> said.contains("2174 x 978 pixels"));
    }

    @Test
    void aPictureThatIsALineIsHeldAndBreaksNothing() {
        for (Fit fit : Fit.values()) {
            assertThat(reason(size(mug("Q1", 1, 250_000_000, 1, fit))).code()).isEqualTo("artwork-unreadable");
            assertThat(reason(size(mug("Q1", 1, 1, 250_000_000, fit))).code()).isEqualTo("artwork-unreadable");
        }
    }

    @Test
    void aTransferTooLongForTheWantedPaperGoesToTheNext() {
        shop.blanks.add(TestShop.cylinder("STEIN", Material.CERAMIC, 340, 180, 30, List.of()));
        List<Unit> units = made(line("Q1", 1, "STEIN", "clamp", TestShop.artwork("h.png", 4000, 2400), Fit.COVER));
        assertThat(units.get(0).rooms()).extracting(room -> room.paper().id()).containsExactly("poster");
    }

    @Test
    void aTransferThatNoPaperTakesIsHeldWithBothSizes() {
        shop.blanks.add(TestShop.cylinder("URN", Material.CERAMIC, 640, 300, 30, List.of()));
        Reason reason = reason(size(line("Q1", 1, "URN", "clamp", TestShop.artwork("h.png", 9000, 4500), Fit.COVER)));
        assertThat(reason.code()).isEqualTo("too-large-for-paper");
        // 600 mm and 12 mm of flag; the poster's 330 x 480 less 5 mm all round.
        assertThat(reason.message()).contains("612.00 x 300.00 mm", "320.00 x 470.00 mm", "poster");
    }

    @Test
    void whatOnlyARollTakesGoesOnTheRoll() {
        shop.papers.add(TestShop.paper("roll", 610, Optional.empty(), 5));
        shop.printers.set(0, TestShop.printer("desk", List.of("pad", "roll")));
        shop.blanks.add(TestShop.cylinder("URN", Material.CERAMIC, 640, 300, 30, List.of()));
        List<Unit> units = made(line("Q1", 1, "URN", "clamp", TestShop.artwork("h.png", 9000, 4500), Fit.COVER));
        assertThat(units.get(0).rooms()).extracting(room -> room.paper().id()).containsExactly("roll");
    }

    @Test
    void whatIsWiderThanARollIsHeldWithTheRollsLongestPage() {
        shop.papers.add(TestShop.paper("roll", 290, Optional.empty(), 5));
        shop.printers.set(0, TestShop.printer("desk", List.of("pad", "roll")));
        shop.blanks.add(TestShop.cylinder("URN", Material.CERAMIC, 640, 300, 30, List.of()));
        Reason reason = reason(size(line("Q1", 1, "URN", "clamp", TestShop.artwork("h.png", 9000, 4500), Fit.COVER)));
        assertThat(reason.code()).isEqualTo("too-large-for-paper");
        assertThat(reason.message()).contains("280.00 x 1990.00 mm", "roll");
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void everyPieceEndsOnceMadeOrHeld(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<MatchedLine> lines = new ArrayList<>();
        int ordered = 0;
        for (int i = 0; i < 300; i++) {
            int quantity = 1 + random.nextInt(5);
            int wide = 1 + random.nextInt(3000);
            int high = 1 + random.nextInt(3000);
            Fit fit = List.of(Fit.CONTAIN, Fit.COVER, Fit.FILL).get(random.nextInt(3));
            lines.add(mug("Q" + random.nextInt(50), quantity, wide, high, fit));
            ordered += quantity;
        }
        Split<Unit> split = size(lines.toArray(MatchedLine[]::new));
        int held = split.held().stream().mapToInt(HeldRow::pieces).sum();
        assertThat(split.made().size() + held).as("seed %d", seed).isEqualTo(ordered);
        assertThat(split.made()).as("seed %d", seed).isNotEmpty();
        assertThat(split.held()).as("seed %d", seed).isNotEmpty();
        assertThat(split.made().stream().map(Unit::id)).as("seed %d", seed).doesNotHaveDuplicates();
        assertThat(split.held()).allSatisfy(row -> assertThat(
                        row.reason().message() + row.reason().cure())
                .as("seed %d", seed)
                .doesNotContain("{", "\n"));
    }

    private MatchedLine mug(String order, int quantity, int wide, int high, Fit fit) {
        return line(order, quantity, "MUG", "clamp", TestShop.artwork("heron.png", wide, high), fit);
    }

    private MatchedLine line(String order, int quantity, String sku, String source, ArtworkFile artwork, Fit fit) {
        OrderLine line = TestShop.line(order, sku, "heron", quantity);
        Design design = TestShop.design("heron", artwork.name(), fit);
        return shop.matched(line, sku, source, design, artwork);
    }

    private Split<Unit> size(MatchedLine... lines) {
        return Sizing.each(
                Stream.of(lines).map(OwedLine::whole).toList(), shop.rules(), new Sights(), Optional.empty(), Set.of());
    }

    private List<Unit> made(MatchedLine... lines) {
        Split<Unit> split = size(lines);
        assertThat(split.held()).as("held").isEmpty();
        return split.made();
    }

    private static Reason reason(Split<Unit> split) {
        assertThat(split.made()).as("made").isEmpty();
        return split.held().get(0).reason();
    }

    private static List<String> codes(Split<Unit> split) {
        return split.made().get(0).notes().stream().map(Note::code).toList();
    }
}
