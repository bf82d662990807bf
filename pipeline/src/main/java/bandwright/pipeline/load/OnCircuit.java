package bandwright.pipeline.load;

import bandwright.pipeline.load.Work.Bank;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * When a day ends at the earliest for what one circuit carries: a proven lower bound.
 *
 * <p>A machine draws its watts while it warms up and while it is loaded; all these watt-seconds have to go through the
 * circuit. And of banks of which no two can be on together one has to be off before another is switched on, so that the
 * times of all add up: 1000 W and 600 W on 1440 W are one after the other.
 */
final class OnCircuit {
    private final Work work;
    private final int most;
    /** Those that have something to do, the hungriest first. */
    private final List<Integer> banks;

    OnCircuit(Work work, int circuit) {
        this.work = work;
        this.most = work.circuits().get(circuit);
        this.banks = IntStream.range(0, work.banks().size())
                .filter(bank -> work.banks().get(bank).circuit() == circuit && seconds(bank) > 0)
                .boxed()
                .sorted(Comparator.comparingInt(bank -> -watts(bank)))
                .toList();
    }

    /** Seconds of the day in which machines are warmed up and loaded; a warm-up may fall into a break. */
    long seconds() {
        return Math.max(seconds(true), oneByOne(true));
    }

    /** Seconds in which machines are loaded, which is never in a break. */
    long loadedSeconds() {
        return Math.max(seconds(false), oneByOne(false));
    }

    /** The first load starts no sooner. */
    long warm() {
        return banks.stream().mapToLong(this::warmUp).min().orElse(0);
    }

    private long seconds(boolean isWarmedUp) {
        long wattSeconds = 0;
        for (int bank : banks) {
            wattSeconds += watts(bank) * (seconds(bank) + (isWarmedUp ? warmUp(bank) : 0));
        }
        return most == 0 ? 0 : -Math.floorDiv(-wattSeconds, most);
    }

    /** Those of which the two that draw least are too much together, so that any two are. */
    private long oneByOne(boolean isWarmedUp) {
        long seconds = 0;
        int least = most;
        for (int bank : banks) {
            if (seconds > 0 && least + watts(bank) <= most) {
                return seconds;
            }
            least = watts(bank);
            seconds += -Math.floorDiv(-seconds(bank) - (isWarmedUp ? warmUp(bank) : 0), work.together(machine(bank)));
        }
        return seconds;
    }

    private Bank machine(int bank) {
        return work.banks().get(bank);
    }

    private long warmUp(int bank) {
        return machine(bank).warmUp();
    }

    private int watts(int bank) {
        return work.wattsOf(machine(bank));
    }

    private long seconds(int bank) {
        return work.chains().stream()
                .filter(chain -> chain.bank() == bank)
                .mapToLong(chain -> chain.cycle() * chain.links().size())
                .sum();
    }
}
