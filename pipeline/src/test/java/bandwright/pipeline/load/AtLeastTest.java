package bandwright.pipeline.load;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.load.Work.Bank;
import bandwright.pipeline.load.Work.Chain;
import bandwright.pipeline.load.Work.Link;
import bandwright.rules.heat.HeatRates;
import bandwright.rules.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Small days whose end can be worked out in one's head; each has a plan that meets the bound, or shows why it can't be more. */
class AtLeastTest {
    private static final Temperature COOL = Temperature.celsius(180);
    private static final Temperature HOT = Temperature.celsius(200);
    private static final List<Link> ONE = List.of(Link.plain(0));
    private static final List<Link> TWO = List.of(Link.plain(0), Link.plain(1));

    @Test
    void anOvenThatTakesLongToEmptyLeavesThePressEmpty() {
        Chain press = new Chain(0, COOL, hands(0, 20, 120, 140), 140, TWO);
        Chain oven = new Chain(1, COOL, hands(0, 200), 200, ONE);
        same(day(List.of(new Bank(1, 0), new Bank(1, 0)), List.of(press, oven), List.of(), List.of()), 480);
    }

    /** 0-200 the press, 200-390 the oven; the second load goes in by itself at 210 and is needed from 390 to 410. */
    @Test
    void butNotWhereALoadPressesBeforeSomebodyIsNeeded() {
        Chain press = new Chain(0, COOL, hands(180, 200), 200, TWO);
        Chain oven = new Chain(1, COOL, hands(0, 190), 190, ONE);
        same(day(List.of(new Bank(1, 0), new Bank(1, 0)), List.of(press, oven), List.of(), List.of()), 410);
    }

    @Test
    void aPressGetsHotterWhileAllHaveTheirBreak() {
        List<Chain> chains = List.of(new Chain(0, COOL, List.of(), 100, ONE), new Chain(0, HOT, List.of(), 100, ONE));
        Work work = day(List.of(new Bank(1, 0)), chains, List.of(), List.of(new Span(100, 700)));
        same(work, 800);
    }

    /** Switched on when the first is off, which needs no time here. */
    @Test
    void aSecondMachineIsWarmedUpInsteadOfHeatingTheFirst() {
        List<Chain> chains = List.of(new Chain(0, COOL, List.of(), 100, ONE), new Chain(0, HOT, List.of(), 100, ONE));
        Bank two = new Bank(2, 0, HeatRates.BUILT_IN, 1000, 0);
        assertThat(AtLeast.of(day(List.of(two), chains, List.of(1440), List.of())))
                .isEqualTo(200);
    }

    @Test
    void whatACircuitCantCarryTogetherAddsUp() {
        List<Chain> chains = List.of(new Chain(0, COOL, List.of(), 100, TWO), new Chain(1, COOL, List.of(), 150, TWO));
        List<Bank> banks =
                List.of(new Bank(1, 60, HeatRates.BUILT_IN, 1000, 0), new Bank(1, 30, HeatRates.BUILT_IN, 600, 0));
        same(day(banks, chains, List.of(1440), List.of()), 60 + 200 + 30 + 300);
        assertThat(AtLeast.of(day(banks, chains, List.of(1600), List.of()))).isEqualTo(330);
    }

    private static void same(Work work, long end) {
        assertThat(Search.best(work, 10_000).merit().end()).isEqualTo(end);
        assertThat(AtLeast.of(work)).isLessThanOrEqualTo(end);
    }

    private static List<Span> hands(long... moments) {
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < moments.length; i += 2) {
            spans.add(new Span(moments[i], moments[i + 1]));
        }
        return spans;
    }

    private static Work day(List<Bank> banks, List<Chain> chains, List<Integer> circuits, List<Span> breaks) {
        return new Work(banks, chains, circuits, 1, breaks, 1, Long.MAX_VALUE);
    }
}
