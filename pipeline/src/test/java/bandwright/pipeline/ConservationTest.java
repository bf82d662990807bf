package bandwright.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConservationTest {
    @Test
    void aSoundWeekendCloses() {
        assertThat(Conservation.check(RunMaker.weekend().run())).isEmpty();
        assertThat(RowCounts.of(RunMaker.weekend().run())).isEqualTo(new RowCounts(5, 1, 1, 1, 1, 1));
    }

    @Test
    void anEmptyInboxCloses() {
        assertThat(Conservation.check(new RunMaker().run())).isEmpty();
    }

    @Test
    void aLostUnitIsMissed() {
        assertThat(damaged(run -> run.units.remove(2)))
                .anyMatch(said -> said.contains("row 3") && said.contains("3 pieces ordered, but 0 made"))
                .anyMatch(said -> said.contains("0071-1-1") && said.contains("no unit of the run"));
    }

    @Test
    void aDoubledUnitIsFound() {
        assertThat(damaged(run -> run.units.add(run.units.get(0))))
                .anyMatch(said -> said.contains("two units have the id Q1042-1-1"))
                .anyMatch(said -> said.contains("one piece is made twice"));
    }

    @Test
    void aUnitOnTwoSheetsIsFound() {
        assertThat(damaged(run -> run.sheets.add(run.sheets.get(0))))
                .anyMatch(said -> said.contains("Q1042-1-1 is on more than one"));
    }

    @Test
    void aUnitOnNoSheetIsFound() {
        assertThat(damaged(run -> run.sheets.remove(1))).containsExactly("unit 0071-1-1 is on no sheet");
    }

    @Test
    void aUnitInNoLoadIsFound() {
        assertThat(damaged(run -> run.loads.remove(1))).containsExactly("unit Q1042-1-2 is in no load");
    }

    @Test
    void aUnitInTwoLoadsIsFound() {
        assertThat(damaged(run -> {
                    Load load = run.loads.get(0);
                    run.loads.add(new Load(9, load.source(), 1, load.setting(), 0, 1, load.units(), false));
                }))
                .anyMatch(said -> said.contains("Q1042-1-1 is in more than one load"));
    }

    @Test
    void twoLoadsOfOneNumberAreFound() {
        assertThat(damaged(run -> {
                    Load load = run.loads.get(0);
                    run.loads.add(new Load(1, load.source(), 1, load.setting(), 0, 1, List.of(), false));
                }))
                .containsExactly("two loads have the number 1");
    }

    @Test
    void aFlagThatNamesAnotherLoadIsFound() {
        assertThat(damaged(run -> {
                    Placed placed = run.sheets.get(1).placed().get(0);
                    run.sheets.set(1, new Sheet(GiftShop.ROOM, List.of(RunMaker.placed(placed.unit(), 1, 7))));
                }))
                .containsExactly("unit 0071-1-1: its sheet says load 1, it is in load 3");
    }

    @Test
    void aLostRowIsMissed() {
        assertThat(damaged(run -> run.empty.clear())).anyMatch(said -> said.contains("5 rows were read, 4"));
        assertThat(damaged(run -> run.lines.remove(0))).isNotEmpty();
        assertThat(damaged(run -> run.held.remove(1))).anyMatch(said -> said.contains("row 4: the row is lost"));
        assertThat(damaged(run -> run.skipped.clear())).anyMatch(said -> said.contains("row 5: the row is lost"));
    }

    @Test
    void aLineThatNothingBecameOfIsFound() {
        assertThat(damaged(run -> {
                    run.units.clear();
                    run.sheets.clear();
                    run.loads.clear();
                }))
                .anyMatch(said -> said.contains("row 2: the row is lost"));
    }

    @Test
    void aRowReadTwiceIsFound() {
        assertThat(damaged(run -> run.lines.add(run.lines.get(0))))
                .anyMatch(said -> said.contains("row 2: the row is counted twice"));
    }

    @Test
    void anEmptyRowThatSomethingWasMadeOfIsFound() {
        assertThat(damaged(run -> run.skipped.add(GiftShop.skipped(run.empty.get(0), 0))))
                .anyMatch(said -> said.contains("row 6: the row is empty"));
    }

    @Test
    void aHeldPieceTooManyIsFound() {
        assertThat(damaged(run -> run.held.set(0, GiftShop.held(run.held.get(0).row(), 3))))
                .anyMatch(said -> said.contains("3 pieces ordered, but 1 made, 3 held and 0 skipped"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void everyRandomInboxClosesUntilAUnitIsDropped(long seed) {
        RunMaker maker = random(new SplittableRandom(seed));

        assertThat(Conservation.check(maker.run())).as("seed " + seed).isEmpty();
        RowCounts rows = RowCounts.of(maker.run());
        assertThat(rows.made() + rows.part() + rows.held() + rows.skipped() + rows.empty())
                .as("seed " + seed)
                .isEqualTo(rows.read());
        maker.units.remove((int) (seed % maker.units.size()));
        assertThat(Conservation.check(maker.run())).as("seed " + seed).isNotEmpty();
    }

    private static RunMaker random(SplittableRandom random) {
        RunMaker maker = new RunMaker();
        for (int row = 2; row < 60; row++) {
            var cells = GiftShop.row(GiftShop.from(row), GiftShop.HEADER, "Q" + row, "MUG-11-W", "tern.jpg", "4");
            switch (random.nextInt(5)) {
                case 0 -> maker.line(cells, 4, 4, 0);
                case 1 -> maker.line(cells, 4, 3, 1);
                case 2 -> maker.hold(cells, random.nextInt(3));
                case 3 -> maker.skip(cells, 4);
                default -> maker.empty(GiftShop.row(GiftShop.from(row), GiftShop.HEADER, ""));
            }
        }
        return maker.placed();
    }

    private static List<String> damaged(Consumer<RunMaker> damage) {
        RunMaker maker = RunMaker.weekend();
        damage.accept(maker);
        return Conservation.check(maker.run());
    }
}
