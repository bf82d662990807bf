package bandwright.pipeline.tile;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.shop.SamplePaper;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Shop;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** How long the pages are that are cut from a roll. Margins are 6.35 mm and the longest page 2,000 mm unless said. */
class RollTest {
    private static final Box WRAP = TilingShop.mm(212.73, 95.25);

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @Test
    void onePictureWithoutAFlagTakesItsShorterSideAndTheMargins() {
        Tiled tiled = tile(copies(WRAP, 1, roll(610)), TilingShop.noFlag(Length.mm(4)));
        assertThat(lengths(tiled)).containsExactly("107.95");
    }

    @Test
    void twoRowsOfSixStandWhereNothingHangsOut() {
        // Across: 6 x 95.25 + 5 x 4 = 591.5 of 597.3. Up: 2 x 212.73 + 4 and the margins, or lying 2 a row, 6 rows:
        // more.
        Tiled tiled = tile(copies(WRAP, 12, roll(610)), TilingShop.noFlag(Length.mm(4)));
        assertThat(lengths(tiled)).containsExactly("442.16");
    }

    /**
     * Six stand in a row as above, and four rows are 4 x 212.73 = 850.92. With all flags upwards there are 2 + 14 + 2 = 18
     * mm between two rows, and 12 mm for the uppermost flags' ink: 66 mm. With both margins that is 929.62 mm. The areas
     * need 24 x 216.73 x 99.25 / 601.3 - 4 and the margins: 867.27 mm.
     */
    @Test
    void twentyFourMugWrapsTakeNoMoreThanFourRowsLaidByHand() {
        Tiled tiled = tile(copies(WRAP, 24, roll(610)), TilingShop.scissors());
        assertThat(tiled.sheets()).hasSize(1);
        assertThat(tiled.sheets().get(0).room().page().height().mm()).isBetween(867.27, 929.62);
        assertThat(SheetCheck.faults(tiled.sheets(), TilingShop.scissors())).isEmpty();
    }

    @Test
    void theFewestPagesThatTheirGreatestLengthAllows() {
        // A page of 500 mm takes two rows of six, so 36 wraps are three pages, and two rows on each.
        PaperRoom roll = roll(610, Optional.of(Length.mm(500)), Optional.empty(), MirrorBy.FILE, 1);
        Tiled tiled = tile(copies(WRAP, 36, roll), TilingShop.noFlag(Length.mm(4)));
        assertThat(lengths(tiled)).containsExactly("442.16", "442.16", "442.16");
        assertThat(tiled.atLeast()).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({
        // 95.25 and both margins: printed at 0.98, the upper margin counts from where printing ends.
        "FILE, 0.98, 110.16",
        "DRIVER, 0.98, 110.16",
        "FILE, 1.02, 107.95",
    })
    void aPrinterThatPrintsTooShortGetsALongerPage(MirrorBy mirror, double scale, String length) {
        PaperRoom roll = roll(610, Optional.empty(), Optional.empty(), mirror, scale);
        assertThat(lengths(tile(copies(WRAP, 1, roll), TilingShop.noFlag(Length.mm(4)))))
                .containsExactly(length);
    }

    @Test
    void aMetreOfARollIsComparedWithSheets() {
        // 24 wraps are 12 sheets of letter at 0.12 = 1.44, or 0.93 m of a roll.
        PaperRoom letter = TilingShop.room(
                "letter", Length.inches(8.5), Length.inches(11), Length.mm(6.35), Optional.of(new BigDecimal("0.12")));

        assertThat(papers(tile(copies(WRAP, 24, letter, priced("1.40")), TilingShop.scissors())))
                .containsOnly("roll");
        assertThat(papers(tile(copies(WRAP, 24, letter, priced("1.80")), TilingShop.scissors())))
                .containsOnly("letter");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void pagesAreCutWhereWhatLiesOnThemEnds(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Shop shop = random.nextInt(3) == 0
                ? TilingShop.noFlag(Length.mm(random.nextInt(8)))
                : random.nextBoolean() ? TilingShop.scissors() : TilingShop.trimmer();
        Length longest = Length.mm(random.nextInt(400, 2000));
        double scale = random.nextInt(3) == 0 ? random.nextDouble(0.95, 1.05) : 1;
        MirrorBy mirror = random.nextBoolean() ? MirrorBy.FILE : MirrorBy.DRIVER;
        PaperRoom roll = roll(random.nextInt(330, 1200), Optional.of(longest), Optional.empty(), mirror, scale);
        List<Unit> units = mixed(random, random.nextInt(1, 60), roll);

        Tiled tiled = tile(units, shop);

        assertThat(SheetCheck.faults(tiled.sheets(), shop)).as("seed %d", seed).isEmpty();
        assertThat(tiled.sheets().stream()
                        .flatMap(sheet -> sheet.placed().stream())
                        .map(Placed::unit))
                .as("seed %d", seed)
                .containsExactlyInAnyOrderElementsOf(units);
        assertThat(tiled.atLeast())
                .as("seed %d", seed)
                .isBetween(1, tiled.sheets().size());
        for (Sheet sheet : tiled.sheets()) {
            Length length = sheet.room().page().height();
            assertThat(length).as("seed %d", seed).isLessThanOrEqualTo(longest);
            assertThat(length.mm()).as("seed %d", seed).isGreaterThanOrEqualTo(areaBound(sheet, shop) - 0.01);
            Length shorter = length.minus(Length.mm(0.02));
            assertThat(SheetCheck.faults(List.of(new Sheet(sheet.room().cutAfter(shorter), sheet.placed())), shop))
                    .as("seed %d: a page that could be shorter", seed)
                    .isNotEmpty();
            assertThat(length.mm()).as("seed %d", seed).isLessThanOrEqualTo(onePieceARow(sheet, shop, scale));
        }
        assertThat(tile(units, shop)).as("seed %d, again", seed).isEqualTo(tiled);
    }

    /** Page by page: the areas with their gaps on the roll's inside, and the margins. */
    private static double areaBound(Sheet sheet, Shop shop) {
        double gap = shop.trimGap().mm();
        double area = sheet.placed().stream()
                .mapToDouble(placed -> (placed.box().width().mm() + gap)
                        * (placed.box().height().mm() + gap))
                .sum();
        return area / (sheet.room().inside().width().mm() + gap) - gap + 2 * 6.35;
    }

    /** Every picture lying, one above the other, each with room for its flag however that hangs. */
    private static double onePieceARow(Sheet sheet, Shop shop, double scale) {
        FlagLaw flag = FlagLaw.of(shop);
        double sum = sheet.placed().stream()
                .mapToDouble(placed -> placed.unit().transfer().box().width().mm()
                                > sheet.room()
                                        .inside()
                                        .width()
                                        .minus(flag.reach())
                                        .mm()
                        ? placed.unit().transfer().box().width().mm()
                                + flag.reach().mm()
                        : Math.max(
                                placed.unit().transfer().box().height().mm(),
                                flag.height().mm()))
                .map(high -> high + shop.trimGap().mm())
                .sum();
        return (sum + 2 * 6.35) / Math.min(1, scale);
    }

    private static List<Unit> mixed(SplittableRandom random, int pieces, PaperRoom room) {
        List<Unit> units = new ArrayList<>();
        List<Box> sizes = new ArrayList<>();
        int kinds = random.nextInt(1, 9);
        for (int i = 0; i < kinds; i++) {
            sizes.add(TilingShop.mm(random.nextInt(60, 280), random.nextInt(40, 130)));
        }
        for (int i = 0; i < pieces; i++) {
            units.add(TilingShop.unit("M" + i, sizes.get(random.nextInt(kinds)), List.of(room)));
        }
        return units;
    }

    private static List<Unit> copies(Box size, int copies, PaperRoom... rooms) {
        List<Unit> units = new ArrayList<>();
        for (int i = 0; i < copies; i++) {
            units.add(TilingShop.unit("U" + i, size, List.of(rooms)));
        }
        return units;
    }

    private static Tiled tile(List<Unit> units, Shop shop) {
        List<Load> loads = TilingShop.loads(units, 3);
        return Tiling.all(loads, TilingShop.rules(shop));
    }

    private static List<String> lengths(Tiled tiled) {
        return tiled.sheets().stream()
                .map(sheet -> sheet.room().page().height().mm2().toString())
                .toList();
    }

    private static List<String> papers(Tiled tiled) {
        return tiled.sheets().stream().map(sheet -> sheet.room().paper().id()).toList();
    }

    private static PaperRoom roll(double width) {
        return roll(width, Optional.empty(), Optional.empty(), MirrorBy.FILE, 1);
    }

    private static PaperRoom priced(String metre) {
        return roll(610, Optional.empty(), Optional.of(new BigDecimal(metre)), MirrorBy.FILE, 1);
    }

    private static PaperRoom roll(
            double width, Optional<Length> longest, Optional<BigDecimal> cost, MirrorBy mirror, double scale) {
        Paper paper = SamplePaper.roll("roll", Length.mm(width), longest, Length.mm(6.35), cost);
        Printer printer = SamplePaper.printer("wide", List.of("roll"), mirror, 1, scale);
        return PaperRoom.of(paper, printer);
    }
}
