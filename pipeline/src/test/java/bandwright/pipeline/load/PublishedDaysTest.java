package bandwright.pipeline.load;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.load.Work.Bank;
import bandwright.pipeline.load.Work.Chain;
import bandwright.pipeline.load.Work.Link;
import bandwright.rules.heat.HeatRates;
import bandwright.rules.units.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Published examples of jobs on alike machines, put as loads that need nobody's hands; and small days of our own. */
class PublishedDaysTest {
    private static final int PLACINGS = 60_000;
    private static final Temperature HEAT = Temperature.celsius(190);

    @ParameterizedTest
    @CsvFileSource(resources = "parallel-machines.csv", numLinesToSkip = 1)
    void theOptimumIsReachedAndTheBoundIsAtLeastTheTextbooks(
            String example, int machines, String times, long bound, long optimum, long list, long longestFirst) {
        Work work = jobs(machines, seconds(times));
        assertThat(Search.best(work, PLACINGS).merit().end()).as(example).isEqualTo(optimum);
        // The table's bound is the longest job or an even share; ours also counts those that have to share a machine.
        assertThat(AtLeast.of(work)).as(example).isBetween(bound, optimum);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "parallel-machines.csv", numLinesToSkip = 1)
    void listSchedulingIsWhatItIsInTheTextbook(
            String example, int machines, String times, long bound, long optimum, long list, long longestFirst) {
        List<Integer> sorted = new ArrayList<>(seconds(times));
        sorted.sort(Comparator.reverseOrder());
        for (Dispatch dispatch : List.of(Dispatch.AS_LISTED, Dispatch.AS_THEY_CAN_START)) {
            assertThat(end(jobs(machines, seconds(times)), dispatch))
                    .as(example)
                    .isEqualTo(list);
            assertThat(end(jobs(machines, sorted), dispatch)).as(example).isEqualTo(longestFirst);
        }
    }

    @Test
    void threePressesOnACircuitForTwoTakeHalfAsLongAgain() {
        Chain jobs = new Chain(0, HEAT, List.of(), 240, links(6));
        Bank limited = new Bank(3, 0, HeatRates.BUILT_IN, 600, 0);
        assertThat(end(day(List.of(limited), List.of(jobs), List.of(1440)))).isEqualTo(12 * 60);
        assertThat(end(day(List.of(new Bank(3, 0)), List.of(jobs), List.of()))).isEqualTo(8 * 60);
    }

    /** 600 W and 1000 W share 1440 W; three loads of 4 min here, two of 5 min there. Never both on: 22 min, not 12. */
    @Test
    void twoPressesThatTheirCircuitCantCarryTogetherTakeTurns() {
        List<Chain> jobs =
                List.of(new Chain(0, HEAT, List.of(), 240, links(3)), new Chain(1, HEAT, List.of(), 300, links(2)));
        List<Bank> limited =
                List.of(new Bank(1, 0, HeatRates.BUILT_IN, 600, 0), new Bank(1, 0, HeatRates.BUILT_IN, 1000, 0));
        assertThat(end(day(limited, jobs, List.of(1440)))).isEqualTo(22 * 60);
        assertThat(end(day(limited, jobs, List.of(1600)))).isEqualTo(12 * 60);
    }

    /** Our own, by exhaustive search: 1 min for 10 degrees up, 2 min down. The day begins at the heat of its first load. */
    @Test
    void loadsGoInTheOrderThatChangesTheHeatLeast() {
        List<Chain> jobs = List.of(
                new Chain(0, Temperature.celsius(180), List.of(), 240, List.of(Link.plain(0))),
                new Chain(0, Temperature.celsius(200), List.of(), 300, List.of(Link.plain(1))),
                new Chain(0, Temperature.celsius(180), List.of(), 240, List.of(Link.plain(2))),
                new Chain(0, Temperature.celsius(160), List.of(), 180, List.of(Link.plain(3))));
        Bank press = new Bank(1, 0, new HeatRates(10, 5), 0, Bank.NO_CIRCUIT);
        Work work = day(List.of(press), jobs, List.of());
        // In the order given: 2 min up, then 4 and 4 down. Rising from 160 all the way: 2 and 2.
        assertThat(end(work, Dispatch.AS_LISTED)).isEqualTo((16 + 10) * 60);
        assertThat(end(work)).isEqualTo((16 + 4) * 60);
        assertThat(AtLeast.of(work)).isEqualTo((16 + 4) * 60);
    }

    private static List<Integer> seconds(String times) {
        return Arrays.stream(times.split(" ")).map(Integer::valueOf).toList();
    }

    /** Each job a chain of its own, as they may start in any order. */
    private static Work jobs(int machines, List<Integer> times) {
        List<Chain> chains = new ArrayList<>();
        for (int time : times) {
            chains.add(new Chain(0, HEAT, List.of(), time, List.of(Link.plain(chains.size()))));
        }
        return day(List.of(new Bank(machines, 0)), chains, List.of());
    }

    private static List<Link> links(int count) {
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            links.add(Link.plain(i));
        }
        return links;
    }

    private static Work day(List<Bank> banks, List<Chain> chains, List<Integer> circuits) {
        return new Work(banks, chains, circuits, 1, List.of(), 1, Long.MAX_VALUE);
    }

    private static long end(Work work) {
        return Search.best(work, PLACINGS).merit().end();
    }

    private static long end(Work work, Dispatch dispatch) {
        int[] machines = work.banks().stream().mapToInt(Bank::machines).toArray();
        Timetable day = new Timetable(work, machines);
        for (int chain : dispatch.order(work, machines)) {
            day.place(chain);
        }
        return day.slots().stream().mapToLong(Timetable.Slot::end).max().orElse(0);
    }
}
