package bandwright.pipeline.load;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.size.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans of random shops keep all laws; and a plan that breaks one is found out. */
class DayLawsTest {
    private static final int DAYS = 30;

    private final List<PressDay> plans = new ArrayList<>();

    @Test
    void anyDayKeepsAllLaws() {
        for (long seed = 0; seed < 2 * DAYS; seed++) {
            RandomDay any = RandomDay.of(seed, 1 + (int) (seed % 25), 4);
            assertThat(DayLaws.broken(any.plan(), any.units(), any.rules()))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {3, 17, 24})
    void theSamePiecesInAnyOrderHaveTheSamePlan(long seed) {
        RandomDay any = RandomDay.of(seed, 20, 4);
        List<Unit> shuffled = new ArrayList<>(any.units());
        Collections.shuffle(shuffled, new Random(seed));
        PressDay plan = any.plan();
        assertThat(any.plan()).as("seed %d, again", seed).isEqualTo(plan);
        assertThat(any.plan(shuffled)).as("seed %d, shuffled", seed).isEqualTo(plan);
    }

    @Test
    void whateverIsWrongInAPlanIsFound() {
        for (long seed = 0; seed < DAYS; seed++) {
            plans.add(RandomDay.of(seed, 8, 3).plan());
        }
        assertThat(findings(day -> day)).as("nothing is wrong").isZero();
        assertThat(findings(DayLawsTest::aLoadSooner)).isEqualTo(DAYS);
        assertThat(findings(DayLawsTest::withoutItsLastLoad)).isEqualTo(DAYS);
        assertThat(findings(DayLawsTest::withoutAHandling)).isEqualTo(DAYS);
        assertThat(findings(DayLawsTest::allDoneByTheFirst)).isGreaterThan(2);
        assertThat(findings(DayLawsTest::allDoneByNobody)).isEqualTo(DAYS);
        assertThat(findings(DayLawsTest::allOnAtOnce)).isGreaterThan(2);
        assertThat(findings(DayLawsTest::switchedOnLate)).isGreaterThan(DAYS / 2);
        assertThat(findings(DayLawsTest::allOnTheFirstMachine)).isGreaterThan(2);
        assertThat(findings(DayLawsTest::unitsSwapped)).isGreaterThan(DAYS / 2);
        assertThat(findings(DayLawsTest::noFirsts)).isGreaterThan(2);
        assertThat(findings(day -> shifted(day, 40 * 60))).isGreaterThan(2);
    }

    /** On how many days a change is found to be wrong. */
    private int findings(UnaryOperator<PressDay> change) {
        int found = 0;
        for (int seed = 0; seed < plans.size(); seed++) {
            RandomDay any = RandomDay.of(seed, 8, 3);
            PressDay day = change.apply(plans.get(seed));
            found += DayLaws.broken(day, any.units(), any.rules()).isEmpty() ? 0 : 1;
        }
        return found;
    }

    private static PressDay with(PressDay day, List<Load> loads, List<MachineDay> machines, List<Handling> hands) {
        return new PressDay(loads, machines, hands, day.atLeastSeconds(), day.whatIfs());
    }

    private static Load moved(Load load, int seconds) {
        return new Load(
                load.number(),
                load.source(),
                load.machine(),
                load.setting(),
                load.startSeconds() + seconds,
                load.endSeconds() + seconds,
                load.units(),
                load.isFirst());
    }

    private static PressDay aLoadSooner(PressDay day) {
        List<Load> loads = new ArrayList<>(day.loads());
        loads.set(loads.size() - 1, moved(loads.get(loads.size() - 1), -1));
        return with(day, loads, day.machines(), day.hands());
    }

    /** All as it was, only later, into a break. */
    private static PressDay shifted(PressDay day, int seconds) {
        return with(
                day,
                day.loads().stream().map(load -> moved(load, seconds)).toList(),
                day.machines().stream()
                        .map(one ->
                                new MachineDay(one.source(), one.machine(), one.on() + seconds, one.off() + seconds))
                        .toList(),
                day.hands().stream()
                        .map(one -> new Handling(
                                one.person(), one.kind(), one.load(), one.from() + seconds, one.to() + seconds))
                        .toList());
    }

    private static PressDay withoutItsLastLoad(PressDay day) {
        return with(day, day.loads().subList(0, day.loads().size() - 1), day.machines(), day.hands());
    }

    private static PressDay withoutAHandling(PressDay day) {
        return day.hands().isEmpty()
                ? withoutItsLastLoad(day)
                : with(
                        day,
                        day.loads(),
                        day.machines(),
                        day.hands().subList(1, day.hands().size()));
    }

    private static PressDay allDoneByTheFirst(PressDay day) {
        return allDoneBy(day, 1);
    }

    private static PressDay allDoneByNobody(PressDay day) {
        return allDoneBy(day, 4);
    }

    private static PressDay allDoneBy(PressDay day, int person) {
        List<Handling> hands = day.hands().stream()
                .map(one -> new Handling(person, one.kind(), one.load(), one.from(), one.to()))
                .toList();
        return with(day, day.loads(), day.machines(), hands);
    }

    private static PressDay allOnAtOnce(PressDay day) {
        List<MachineDay> machines = day.machines().stream()
                .map(one -> new MachineDay(one.source(), one.machine(), 0, day.endSeconds()))
                .toList();
        return with(day, day.loads(), machines, day.hands());
    }

    private static PressDay switchedOnLate(PressDay day) {
        List<MachineDay> machines = day.machines().stream()
                .map(one -> new MachineDay(one.source(), one.machine(), one.on() + 1, one.off()))
                .toList();
        return with(day, day.loads(), machines, day.hands());
    }

    private static PressDay allOnTheFirstMachine(PressDay day) {
        List<Load> loads = day.loads().stream()
                .map(load -> new Load(
                        load.number(),
                        load.source(),
                        1,
                        load.setting(),
                        load.startSeconds(),
                        load.endSeconds(),
                        load.units(),
                        load.isFirst()))
                .toList();
        List<MachineDay> machines =
                day.machines().stream().filter(one -> one.machine() == 1).toList();
        return with(day, loads, machines, day.hands());
    }

    /** What is in the first load and what is in the last one change places. */
    private static PressDay unitsSwapped(PressDay day) {
        List<Load> loads = new ArrayList<>(day.loads());
        Load first = loads.get(0);
        Load last = loads.get(loads.size() - 1);
        loads.set(0, holding(first, last.units(), first.isFirst()));
        loads.set(loads.size() - 1, holding(last, first.units(), last.isFirst()));
        return with(day, loads, day.machines(), day.hands());
    }

    private static PressDay noFirsts(PressDay day) {
        List<Load> loads = day.loads().stream()
                .map(load -> holding(load, load.units(), false))
                .toList();
        return with(day, loads, day.machines(), day.hands());
    }

    private static Load holding(Load load, List<Unit> units, boolean isFirst) {
        return new Load(
                load.number(),
                load.source(),
                load.machine(),
                load.setting(),
                load.startSeconds(),
                load.endSeconds(),
                units,
                isFirst);
    }
}
