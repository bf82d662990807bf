package bandwright.pipeline.tile;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every job, whatever its sizes, papers, borders, gaps and flags. */
class TilingPropertyTest {
    static LongStream seeds() {
        return LongStream.range(0, 120);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyUnitLiesOnOneSheetAndNothingIsTooNear(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Shop shop = shop(random);
        List<Load> loads = loads(random);
        Rulebook rules = TilingShop.rules(shop);

        Tiled tiled = Tiling.all(loads, rules);

        assertThat(SheetCheck.faults(tiled.sheets(), shop)).as("seed %d", seed).isEmpty();
        List<String> asked = loads.stream()
                .flatMap(load -> load.units().stream().map(Unit::id))
                .toList();
        List<String> laid = tiled.sheets().stream()
                .flatMap(sheet ->
                        sheet.placed().stream().map(placed -> placed.unit().id()))
                .toList();
        assertThat(laid).as("seed %d", seed).containsExactlyInAnyOrderElementsOf(asked);
        assertThat(tiled.sheets()).as("seed %d", seed).hasSizeGreaterThanOrEqualTo(tiled.atLeast());
        assertThat(tiled.atLeast()).as("seed %d", seed).isGreaterThanOrEqualTo(byArea(tiled, shop));
        assertThat(Tiling.all(loads, rules)).as("seed %d, again", seed).isEqualTo(tiled);
        for (Sheet sheet : tiled.sheets()) {
            for (Placed placed : sheet.placed()) {
                assertThat(loads.get(placed.load() - 1).units()).contains(placed.unit());
            }
        }
    }

    /** The contract's area bound, each room for itself. */
    private static int byArea(Tiled tiled, Shop shop) {
        double gap = shop.trimGap().mm();
        int sum = 0;
        List<PaperRoom> rooms =
                tiled.sheets().stream().map(Sheet::room).distinct().toList();
        for (PaperRoom room : rooms) {
            double area = tiled.sheets().stream()
                    .filter(sheet -> sheet.room().equals(room))
                    .flatMap(sheet -> sheet.placed().stream())
                    .mapToDouble(p ->
                            (p.box().width().mm() + gap) * (p.box().height().mm() + gap))
                    .sum();
            double sheet =
                    (room.inside().width().mm() + gap) * (room.inside().height().mm() + gap);
            sum += (int) Math.ceil(area / sheet - 1e-9);
        }
        return sum;
    }

    private static Shop shop(SplittableRandom random) {
        boolean usual = random.nextInt(3) == 0;
        Length border = usual ? Length.mm(2) : Length.mm(random.nextInt(0, 9) * 0.75);
        Length gap = usual ? Length.mm(4) : new Length(random.nextLong(0, 9_000_000));
        Length depth = random.nextInt(4) == 0 ? Length.ZERO : Length.mm(random.nextInt(8, 22));
        Length height = usual ? Length.mm(30) : new Length(random.nextLong(10_000_000, 60_000_000));
        Cutting cutting = random.nextInt(3) == 0 ? Cutting.TRIMMER : Cutting.SCISSORS;
        return TilingShop.shop(border, gap, depth, height, cutting);
    }

    private static List<Load> loads(SplittableRandom random) {
        PaperRoom letter = TilingShop.letter();
        PaperRoom large = TilingShop.thirteenByNineteen();
        List<Box> sizes = new ArrayList<>();
        int kinds = random.nextInt(1, 9);
        for (int k = 0; k < kinds; k++) {
            sizes.add(Box.of(
                    new Length(random.nextLong(20_000_000, 150_000_000)),
                    new Length(random.nextLong(15_000_000, 150_000_000))));
        }
        List<List<PaperRoom>> papers = List.of(List.of(letter), List.of(large), List.of(letter, large));
        List<PaperRoom> wanted = papers.get(random.nextInt(3));
        List<Unit> units = new ArrayList<>();
        int pieces = random.nextInt(1, 50);
        for (int i = 0; i < pieces; i++) {
            units.add(TilingShop.unit("T" + i, sizes.get(random.nextInt(kinds)), wanted));
        }
        return TilingShop.loads(units, random.nextInt(1, 7));
    }
}
