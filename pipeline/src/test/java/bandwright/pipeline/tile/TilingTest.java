package bandwright.pipeline.tile;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Shop;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TilingTest {
    private static final List<Box> GIFTS = List.of(
            TilingShop.mm(212.73, 95.25),
            TilingShop.mm(241.3, 95.25),
            TilingShop.mm(205, 120),
            TilingShop.mm(110, 110),
            TilingShop.mm(95, 95),
            TilingShop.mm(180, 75),
            TilingShop.mm(150, 90),
            TilingShop.mm(160, 60));

    @Test
    void nothingToPrintIsNoSheet() {
        assertThat(Tiling.all(List.of(), TilingShop.rules(TilingShop.scissors())))
                .isEqualTo(new Tiled(List.of(), 0));
    }

    @Test
    void twoMugWrapsShareALetterSheetUpright() {
        Tiled tiled = tile(copies(TilingShop.mm(212.73, 95.25), 2, TilingShop.letter()), TilingShop.scissors());

        assertThat(tiled.sheets()).hasSize(1);
        assertThat(tiled.atLeast()).isEqualTo(1);
        assertThat(tiled.sheets().get(0).placed())
                .allMatch(placed -> placed.rotation().swapsSides());
    }

    @Test
    void facingFlagsHangIntoEachOthersHollow() {
        // Two pictures of 128 mm and the flags' 16 mm and 2 mm between them are 274 mm of the inside's 276. One flag
        // outwards would need another 12 mm for its ink; so both hang inwards, side by side.
        PaperRoom narrow = TilingShop.room("strip", Length.mm(130), Length.mm(280), Length.mm(2), Optional.empty());
        Tiled tiled = tile(copies(TilingShop.mm(128, 80), 2, narrow), TilingShop.scissors());

        assertThat(tiled.sheets()).hasSize(1);
        assertThat(SheetCheck.faults(tiled.sheets(), TilingShop.scissors())).isEmpty();
    }

    /** The plain way: in row order, left to right, a new shelf when a row is full, flags on the right. */
    @ParameterizedTest
    @CsvSource({"1, 60", "2, 60", "3, 120", "4, 200"})
    void aMixedJobNeedsATenthLessThanShelvesInRowOrder(long seed, int pieces) {
        PaperRoom room = TilingShop.thirteenByNineteen();
        List<Unit> units = mixed(seed, pieces, room);

        Tiled tiled = tile(units, TilingShop.scissors());

        assertThat(tiled.sheets().size()).isLessThanOrEqualTo((int) (0.9 * shelves(units, room)));
        assertThat(tiled.sheets()).hasSizeLessThanOrEqualTo((int) Math.ceil(1.25 * tiled.atLeast()));
    }

    private static int shelves(List<Unit> units, PaperRoom room) {
        double width = room.inside().width().mm();
        double height = room.inside().height().mm();
        double x = 0;
        double y = 0;
        double shelf = 0;
        int sheets = 1;
        for (Unit unit : units) {
            double w = unit.transfer().width().mm() + 2 + 14;
            double h = unit.transfer().height().mm();
            if (x + w > width) {
                x = 0;
                y += shelf + 4;
                shelf = 0;
            }
            if (y + h > height) {
                sheets++;
                x = 0;
                y = 0;
                shelf = 0;
            }
            x += w + 4;
            shelf = Math.max(shelf, h);
        }
        return sheets;
    }

    @Test
    void aTrimmerCanCutEverySheetEdgeToEdge() {
        List<Unit> units = mixed(5, 80, TilingShop.thirteenByNineteen());
        Tiled trimmed = tile(units, TilingShop.trimmer());
        Tiled snipped = tile(units, TilingShop.scissors());

        assertThat(SheetCheck.faults(trimmed.sheets(), TilingShop.trimmer())).isEmpty();
        assertThat(trimmed.sheets().size() - snipped.sheets().size()).isBetween(0, 2);
    }

    @Test
    void earlyLoadsLieOnEarlySheets() {
        List<Unit> units = copies(TilingShop.mm(212.73, 95.25), 20, TilingShop.letter());
        Tiled tiled = tile(units, TilingShop.scissors());

        List<Integer> loads = tiled.sheets().stream()
                .flatMap(sheet -> sheet.placed().stream())
                .map(Placed::load)
                .toList();
        assertThat(tiled.sheets()).hasSize(10);
        assertThat(loads).isSorted();
    }

    @Test
    void theCheaperOfTwoWantedPapersIsTaken() {
        PaperRoom letter = TilingShop.room(
                "letter", Length.inches(8.5), Length.inches(11), Length.mm(6.35), Optional.of(new BigDecimal("0.10")));
        PaperRoom large = TilingShop.room(
                "large", Length.inches(13), Length.inches(19), Length.mm(6.35), Optional.of(new BigDecimal("0.60")));
        PaperRoom largeForLess = TilingShop.room(
                "large", Length.inches(13), Length.inches(19), Length.mm(6.35), Optional.of(new BigDecimal("0.15")));
        Box wrap = TilingShop.mm(212.73, 95.25);

        assertThat(papers(tile(copies(wrap, 8, letter, large), TilingShop.scissors())))
                .containsOnly("letter");
        assertThat(papers(tile(copies(wrap, 8, letter, largeForLess), TilingShop.scissors())))
                .containsOnly("large");
    }

    @Test
    void withoutCostsTheFewerSheetsAreTaken() {
        List<Unit> units =
                copies(TilingShop.mm(212.73, 95.25), 8, TilingShop.letter(), TilingShop.thirteenByNineteen());
        assertThat(papers(tile(units, TilingShop.scissors()))).containsOnly("13 x 19");
    }

    @Test
    void whatTheWantedPaperDoesNotTakeGoesOnItsOwnPaperAndSheetsOfAPaperStandTogether() {
        List<Unit> units = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            units.add(TilingShop.unit("T" + i, TilingShop.mm(212.73, 95.25), List.of(TilingShop.letter())));
            units.add(TilingShop.unit("K" + i, TilingShop.mm(300, 250), List.of(TilingShop.thirteenByNineteen())));
        }
        assertThat(papers(tile(units, TilingShop.scissors())))
                .containsExactly(
                        "letter", "letter", "letter", "13 x 19", "13 x 19", "13 x 19", "13 x 19", "13 x 19", "13 x 19");
    }

    @Test
    void aShopWithoutFlagsGetsNone() {
        Tiled tiled = tile(copies(TilingShop.mm(100, 100), 3, TilingShop.letter()), TilingShop.noFlag(Length.mm(4)));

        assertThat(tiled.sheets()).allSatisfy(sheet -> assertThat(sheet.placed())
                .allMatch(placed -> placed.flag().isEmpty()));
    }

    @Test
    void theOrderInWhichASetGivesItsUnitsChangesOnlyWhichOneLiesWhere() {
        List<Unit> units = mixed(6, 50, TilingShop.thirteenByNineteen());
        Set<Unit> unordered = new HashSet<>(units);
        List<Unit> shuffled = new ArrayList<>(unordered);
        Collections.reverse(shuffled);
        shuffled.sort((a, b) ->
                a.transfer().box().width().compareTo(b.transfer().box().width()));

        assertThat(tile(shuffled, TilingShop.scissors()).sheets())
                .hasSameSizeAs(tile(units, TilingShop.scissors()).sheets());
    }

    @Test
    void tenThousandPiecesAreLaidWithoutAFault() {
        List<Unit> units = mixed(8, 10_000, TilingShop.thirteenByNineteen());
        Tiled tiled = tile(units, TilingShop.scissors());

        assertThat(SheetCheck.faults(tiled.sheets(), TilingShop.scissors())).isEmpty();
        assertThat(tiled.sheets().stream()
                        .mapToInt(sheet -> sheet.placed().size())
                        .sum())
                .isEqualTo(10_000);
        assertThat(tiled.sheets()).hasSizeLessThanOrEqualTo((int) (1.17 * tiled.atLeast()));
    }

    @Test
    void theCheckSeesAPictureThatIsTooNearAndOneInTheMargin() {
        Tiled tiled = tile(copies(TilingShop.mm(90, 60), 2, TilingShop.letter()), TilingShop.noFlag(Length.mm(4)));
        Sheet sheet = tiled.sheets().get(0);
        Placed first = sheet.placed().get(0);
        Placed nearer =
                moved(sheet.placed().get(1), first.box().x(), first.box().top().plus(Length.mm(3.99)));
        Placed outside = moved(first, Length.mm(6.34), Length.mm(100));

        assertThat(SheetCheck.faults(
                        List.of(new Sheet(sheet.room(), List.of(first, nearer))), TilingShop.noFlag(Length.mm(4))))
                .isNotEmpty();
        assertThat(SheetCheck.faults(
                        List.of(new Sheet(sheet.room(), List.of(outside))), TilingShop.noFlag(Length.mm(4))))
                .isNotEmpty();
    }

    private static Placed moved(Placed placed, Length x, Length y) {
        Box box = new Box(x, y, placed.box().width(), placed.box().height());
        return new Placed(placed.unit(), placed.load(), box, placed.rotation(), placed.flag());
    }

    private static Tiled tile(List<Unit> units, Shop shop) {
        List<Load> loads = TilingShop.loads(units, 2);
        return Tiling.all(loads, TilingShop.rules(shop));
    }

    private static List<String> papers(Tiled tiled) {
        return tiled.sheets().stream().map(sheet -> sheet.room().paper().id()).toList();
    }

    private static List<Unit> copies(Box size, int count, PaperRoom... rooms) {
        List<Unit> units = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            units.add(TilingShop.unit("T" + i, size, List.of(rooms)));
        }
        return units;
    }

    /** Rows of one to four pieces of one size. */
    private static List<Unit> mixed(long seed, int pieces, PaperRoom room) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Unit> units = new ArrayList<>();
        while (units.size() < pieces) {
            Box size = GIFTS.get(random.nextInt(GIFTS.size()));
            int quantity = Math.min(pieces - units.size(), random.nextInt(1, 5));
            for (int i = 0; i < quantity; i++) {
                units.add(TilingShop.unit("T" + units.size(), size, List.of(room)));
            }
        }
        return units;
    }
}
