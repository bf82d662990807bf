package bandwright.pipeline.load;

import bandwright.pipeline.load.Work.Bank;
import bandwright.pipeline.load.Work.Chain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * When a day ends at the earliest, whatever the plan: a proven lower bound. Each machine bank must be warm, do all its
 * loads and change its heat from one end to the other; the people must do all that needs hands; a circuit must carry
 * them; breaks come on top.
 */
final class AtLeast {
    private final Work work;

    private AtLeast(Work work) {
        this.work = work;
    }

    /** Seconds from the start of the day's work. */
    static long of(Work work) {
        AtLeast bound = new AtLeast(work);
        long most = bound.hands();
        for (int bank = 0; bank < work.banks().size(); bank++) {
            most = Math.max(most, bound.machines(bank));
        }
        for (int circuit = 0; circuit < work.circuits().size(); circuit++) {
            OnCircuit on = new OnCircuit(work, circuit);
            most = Math.max(most, Math.max(on.seconds(), bound.afterBreaks(on.warm(), on.loadedSeconds())));
        }
        return most;
    }

    private long hands() {
        long warm = Long.MAX_VALUE;
        long seconds = 0;
        for (Chain chain : work.chains()) {
            warm = Math.min(warm, work.banks().get(chain.bank()).warmUp());
            long each = chain.hands().stream()
                    .mapToLong(span -> span.to() - span.from())
                    .sum();
            seconds += each * chain.links().size();
        }
        return afterBreaks(warm, -Math.floorDiv(-seconds, work.people()));
    }

    private long machines(int bank) {
        Bank machines = work.banks().get(bank);
        List<Chain> chains =
                work.chains().stream().filter(chain -> chain.bank() == bank).toList();
        List<Long> cycles = new ArrayList<>();
        chains.forEach(chain -> chain.links().forEach(link -> cycles.add(chain.cycle())));
        if (cycles.isEmpty()) {
            return 0;
        }
        cycles.sort(Comparator.reverseOrder());
        int count = work.together(machines);
        long longest = onMachines(cycles, count);
        long most = afterBreaks(machines.warmUp(), longest);
        if (count == 1) {
            // Heat may change while all have their break.
            long change = Math.max(0, changes(machines, chains) - breaks());
            most = Math.max(most, afterBreaks(machines.warmUp(), longest + change));
        }
        boolean isAlone = count == 1
                && work.people() == 1
                && chains.stream().noneMatch(chain -> chain.hands().isEmpty());
        return isAlone ? Math.max(most, alone(bank, chains, longest)) : most;
    }

    /**
     * With one person and one machine: what takes hands elsewhere for longer than this machine presses between two
     * handlings has no place within a load, so that the machine is empty all that time; but for what a load may press
     * before it is first touched and after it was last touched, as where nothing is to be loaded or unloaded.
     */
    private long alone(int bank, List<Chain> chains, long cycles) {
        long press = chains.stream().mapToLong(AtLeast::freeHands).max().orElse(0);
        long before = chains.stream()
                .mapToLong(chain -> chain.hands().get(0).from())
                .max()
                .orElse(0);
        long after = chains.stream()
                .mapToLong(chain -> chain.cycle() - lastTouch(chain))
                .max()
                .orElse(0);
        long from = work.banks().get(bank).warmUp();
        long elsewhere = 0;
        for (Chain chain : work.chains()) {
            for (Span span : chain.hands()) {
                long empty = span.to() - span.from() - before - after;
                if (chain.bank() != bank && span.to() - span.from() > press && empty > 0) {
                    elsewhere += empty * chain.links().size();
                    from = Math.min(from, work.banks().get(chain.bank()).warmUp() + span.from());
                }
            }
        }
        return afterBreaks(from, cycles + elsewhere);
    }

    /** The longest time between two handlings of a load. */
    private static long freeHands(Chain chain) {
        long longest = 0;
        long free = chain.cycle();
        for (Span span : chain.hands()) {
            longest = Math.max(longest, span.from() - free);
            free = span.to();
        }
        return longest;
    }

    private static long lastTouch(Chain chain) {
        return chain.hands().get(chain.hands().size() - 1).to();
    }

    private long breaks() {
        return work.breaks().stream()
                .mapToLong(pause -> pause.to() - pause.from())
                .sum();
    }

    /**
     * The textbook's bound for loads on alike machines: all of them shared out evenly, and of the k m + 1 longest loads
     * k + 1 on one machine.
     *
     * @param cycles the longest first
     */
    private static long onMachines(List<Long> cycles, int machines) {
        long sum = cycles.stream().mapToLong(Long::longValue).sum();
        long most = -Math.floorDiv(-sum, machines);
        for (int k = 0; k * machines < cycles.size(); k++) {
            long shortest = 0;
            for (int i = 0; i <= k; i++) {
                shortest += cycles.get(k * machines - i);
            }
            most = Math.max(most, shortest);
        }
        return most;
    }

    /**
     * One machine must pass all the heat between the coolest and the hottest at least once, up or down; if there are more
     * of them, of which the circuit carries one, another can be warmed up instead.
     */
    private static long changes(Bank bank, List<Chain> chains) {
        Chain coolest = chains.stream().min(Comparator.comparing(Chain::heat)).orElseThrow();
        Chain hottest = chains.stream().max(Comparator.comparing(Chain::heat)).orElseThrow();
        long change = Math.min(
                bank.rates().secondsBetween(coolest.heat(), hottest.heat()),
                bank.rates().secondsBetween(hottest.heat(), coolest.heat()));
        return bank.machines() == 1 ? change : Math.min(change, bank.warmUp());
    }

    /** When so many seconds of work are done that begin at a time and stop in the breaks. */
    private long afterBreaks(long from, long seconds) {
        long end = from + seconds;
        for (Span pause : work.breaks()) {
            if (pause.to() > from && pause.from() < end) {
                end += pause.to() - Math.max(from, pause.from());
            }
        }
        return end;
    }
}
