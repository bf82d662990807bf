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
            GiftShop.mm(212.73, 95.25),
            GiftShop.mm(241.3, 95.25),
            GiftShop.mm(205, 120),
            GiftShop.mm(110, 110),
            GiftShop.mm(95, 95),
            GiftShop.mm(180, 75),
            GiftShop.mm(150, 90),
            GiftShop.mm(160, 60));

    @Test
    void nothingToPrintIsNoSheet() {
        assertThat(Tiling.all(List.of(), GiftShop.rules(GiftShop.scissors()))).isEqualTo(new Tiled(List.of(), 0));
    }

    @Test
    void twoMugWrapsShareALetterSheetUpright() {
        Tiled tiled = tile(copies(GiftShop.mm(212.73, 95.25), 2, GiftShop.letter()), GiftShop.scissors());

        assertThat(tiled.sheets()).hasSize(1);
        assertThat(tiled.atLeast()).isEqualTo(1);
        assertThat(tiled.sheets().get(0).placed())
                .allMatch(placed -> placed.rotation().swapsSides());
    }

    @Test
    void facingFlagsHangIntoEachOthersHollow() {
        // Two pictures of 128 mm and the flags' 16 mm and 2 mm between them are 274 mm of the inside's 276. One flag
        // outwards would need another 12 mm for its ink; so both hang inwards, side by side.
        PaperRoom narrow = GiftShop.room("strip", Length.mm(130), Length.mm(280), Length.mm(2), Optional.empty());
        Tiled tiled = tile(copies(GiftShop.mm(128, 80), 2, narrow), GiftShop.scissors());

        assertThat(tiled.sheets()).hasSize(1);
        assertThat(SheetCheck.faults(tiled.sheets(), GiftShop.scissors())).isEmpty();
    }

    /** The plain way: in row order, left to right, a new shelf when a row is full, flags on the right. */
    @ParameterizedTest
    @CsvSource({"1, 60", "2, 60", "3, 120", "4, 200"})
    void aMixedJobNeedsATenthLessThanShelvesInRowOrder(long seed, int pieces) {
        PaperRoom room = GiftShop.thirteenByNineteen();
        List<Unit> units = mixed(seed, pieces, room);

        Tiled tiled = tile(units, GiftShop.scissors());

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
        List<Unit> units = mixed(5, 80, GiftShop.thirteenByNineteen());
        Tiled trimmed = tile(units, GiftShop.trimmer());
        Tiled snipped = tile(units, GiftShop.scissors());

        assertThat(SheetCheck.faults(trimmed.sheets(), GiftShop.trimmer())).isEmpty();
        assertThat(trimmed.sheets().size() - snipped.sheets().size()).isBetween(0, 2);
    }

    @Test
    void earlyLoadsLieOnEarlySheets() {
        List<Unit> units = copies(GiftShop.mm(212.73, 95.25), 20, GiftShop.letter());
        Tiled tiled = tile(units, GiftShop.scissors());

        List<Integer> loads = tiled.sheets().stream()
                .flatMap(sheet -> sheet.placed().stream())
                .map(Placed::load)
                .toList();
        assertThat(tiled.sheets()).hasSize(10);
        assertThat(loads).isSorted();
    }

    @Test
    void theCheaperOfTwoWantedPapersIsTaken() {
        PaperRoom letter = GiftShop.room(
                "letter", Length.inches(8.5), Length.inches(11), Length.mm(6.35), Optional.of(new BigDecimal("0.10")));
        PaperRoom large = GiftShop.room(
                "large", Length.inches(13), Length.inches(19), Length.mm(6.35), Optional.of(new BigDecimal("0.60")));
        PaperRoom largeForLess = GiftShop.room(
                "large", Length.inches(13), Length.inches(19), Length.mm(6.35), Optional.of(new BigDecimal("0.15")));
        Box wrap = GiftShop.mm(212.73, 95.25);

        assertThat(papers(tile(copies(wrap, 8, letter, large), GiftShop.scissors())))
                .containsOnly("letter");
        assertThat(papers(tile(copies(wrap, 8, letter, largeForLess), GiftShop.scissors())))
                .containsOnly("large");
    }

    @Test
    void withoutCostsTheFewerSheetsAreTaken() {
        List<Unit> units = copies(GiftShop.mm(212.73, 95.25), 8, GiftShop.letter(), GiftShop.thirteenByNineteen());
        assertThat(papers(tile(units, GiftShop.scissors()))).containsOnly("13 x 19");
    }

    @Test
    void whatTheWantedPaperDoesNotTakeGoesOnItsOwnPaperAndSheetsOfAPaperStandTogether() {
        List<Unit> units = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            units.add(GiftShop.unit("T" + i, GiftShop.mm(212.73, 95.25), List.of(GiftShop.letter())));
            units.add(GiftShop.unit("K" + i, GiftShop.mm(300, 250), List.of(GiftShop.thirteenByNineteen())));
        }
        assertThat(papers(tile(units, GiftShop.scissors())))
                .containsExactly(
                        "letter", "letter", "letter", "13 x 19", "13 x 19", "13 x 19", "13 x 19", "13 x 19", "13 x 19");
    }

    @Test
    void aShopWithoutFlagsGetsNone() {
        Tiled tiled = tile(copies(GiftShop.mm(100, 100), 3, GiftShop.letter()), GiftShop.noFlag(Length.mm(4)));

        assertThat(tiled.sheets()).allSatisfy(sheet -> assertThat(sheet.placed())
                .allMatch(placed -> placed.flag().isEmpty()));
    }

    @Test
    void theOrderInWhichASetGivesItsUnitsChangesOnlyWhichOneLiesWhere() {
        List<Unit> units = mixed(6, 50, GiftShop.thirteenByNineteen());
        Set<Unit> unordered = new HashSet<>(units);
        List<Unit> shuffled = new ArrayList<>(unordered);
        Collections.reverse(shuffled);
        shuffled.sort((a, b) ->
                a.transfer().box().width().compareTo(b.transfer().box().width()));

        assertThat(tile(shuffled, GiftShop.scissors()).sheets())
                .hasSameSizeAs(tile(units, GiftShop.scissors()).sheets());
    }

    @Test
    void tenThousandPiecesAreLaidWithoutAFault() {
        List<Unit> units = mixed(8, 10_000, GiftShop.thirteenByNineteen());
        Tiled tiled = tile(units, GiftShop.scissors());

        assertThat(SheetCheck.faults(tiled.sheets(), GiftShop.scissors())).isEmpty();
        assertThat(tiled.sheets().stream()
                        .mapToInt(sheet -> sheet.placed().size())
                        .sum())
                .isEqualTo(10_000);
        assertThat(tiled.sheets()).hasSizeLessThanOrEqualTo((int) (1.17 * tiled.atLeast()));
    }

    @Test
    void theCheckSeesAPictureThatIsTooNearAndOneInTheMargin() {
        Tiled tiled = tile(copies(GiftShop.mm(90, 60), 2, GiftShop.letter()), GiftShop.noFlag(Length.mm(4)));
        Sheet sheet = tiled.sheets().get(0);
        Placed first = sheet.placed().get(0);
        Placed nearer =
                moved(sheet.placed().get(1), first.box().x(), first.box().top().plus(Length.mm(3.99)));
        Placed outside = moved(first, Length.mm(6.34), Length.mm(100));

        assertThat(SheetCheck.faults(
                        List.of(new Sheet(sheet.room(), List.of(first, nearer))), GiftShop.noFlag(Length.mm(4))))
                .isNotEmpty();
        assertThat(SheetCheck.faults(List.of(new Sheet(sheet.room(), List.of(outside))), GiftShop.noFlag(Length.mm(4))))
                .isNotEmpty();
    }

    private static Placed moved(Placed placed, Length x, Length y) {
        Box box = new Box(x, y, placed.box().width(), placed.box().height());
        return new Placed(placed.unit(), placed.load(), box, placed.rotation(), placed.flag());
    }

    private static Tiled tile(List<Unit> units, Shop shop) {
        List<Load> loads = GiftShop.loads(units, 2);
        return Tiling.all(loads, GiftShop.rules(shop));
    }

    private static List<String> papers(Tiled tiled) {
        return tiled.sheets().stream().map(sheet -> sheet.room().paper().id()).toList();
    }

    private static List<Unit> copies(Box size, int count, PaperRoom... rooms) {
        List<Unit> units = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            units.add(GiftShop.unit("T" + i, size, List.of(rooms)));
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
                units.add(GiftShop.unit("T" + units.size(), size, List.of(room)));
            }
        }
        return units;
    }
}
