package bandwright.pipeline.load;

import bandwright.pipeline.load.Work.Bank;
import bandwright.pipeline.load.Work.Chain;
import bandwright.pipeline.load.Work.Link;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A day that is being filled, load by load, each as early as hands, its machine, its circuit and the breaks allow. A
 * machine is switched on once and off after its last load; as it holds its heat between loads, its watts count all that
 * while. So of two presses that their circuit can't carry together, one is done before the other is switched on.
 */
final class Timetable {
    /** A load in time. */
    record Slot(int chain, int link, int machine, long start, long end) {}

    private static final long NEVER = Long.MAX_VALUE;

    private final Work work;
    private final int[] mostMachines;
    private final Hands hands;
    private final List<Slot> slots;
    /** The machines of all banks, one after the other. */
    private final int[] firstMachine;

    private final long[] ready;
    private final int[] lastChain;
    private final int[] switchedOn;
    private final int[] left;
    private final int[] placed;
    private final long[] lastStart;
    private final long[][] ends;

    /** @param mostMachines how many machines of each bank may be switched on */
    Timetable(Work work, int[] mostMachines) {
        this.work = work;
        this.mostMachines = mostMachines;
        this.hands = new Hands(work.people());
        this.slots = new ArrayList<>(work.loads());
        int banks = work.banks().size();
        this.firstMachine = new int[banks + 1];
        for (int bank = 0; bank < banks; bank++) {
            firstMachine[bank + 1] = firstMachine[bank] + mostMachines[bank];
        }
        this.ready = new long[firstMachine[banks]];
        this.lastChain = new int[firstMachine[banks]];
        this.switchedOn = new int[banks];
        this.left = new int[banks];
        int chains = work.chains().size();
        this.placed = new int[chains];
        this.lastStart = new long[chains];
        this.ends = new long[chains][];
        for (int chain = 0; chain < chains; chain++) {
            ends[chain] = new long[work.chains().get(chain).links().size()];
            left[work.chains().get(chain).bank()] += ends[chain].length;
        }
        Arrays.fill(lastChain, -1);
    }

    List<Slot> slots() {
        return slots;
    }

    /** The next load of a chain that isn't done. */
    Link next(int chain) {
        return work.chains().get(chain).links().get(placed[chain]);
    }

    /** What the machines of a chain have still to do, for each of them. */
    long workLeft(int chain) {
        int bank = work.chains().get(chain).bank();
        long seconds = 0;
        for (int other = 0; other < placed.length; other++) {
            Chain loads = work.chains().get(other);
            seconds += loads.bank() == bank ? loads.cycle() * (ends[other].length - placed[other]) : 0;
        }
        return seconds / mostMachines[bank];
    }

    boolean isDone(int chain) {
        return placed[chain] == ends[chain].length;
    }

    /** When the next load of a chain could start; {@link Long#MAX_VALUE} while its circuit has no room. */
    long earliest(int chain) {
        long soonest = NEVER;
        int bank = work.chains().get(chain).bank();
        for (int machine = firstMachine[bank]; machine < usable(bank); machine++) {
            soonest = Math.min(soonest, warmAt(machine, chain));
        }
        return soonest == NEVER ? NEVER : fit(chain, Math.max(soonest, notBefore(chain)));
    }

    /** Whether a machine is set for that chain since its last load. */
    boolean isSet(int chain) {
        int bank = work.chains().get(chain).bank();
        for (int machine = firstMachine[bank]; machine < firstMachine[bank] + switchedOn[bank]; machine++) {
            if (lastChain[machine] == chain) {
                return true;
            }
        }
        return false;
    }

    /** Gives the next load of a chain its time. Returns false, and does nothing, while its circuit has no room. */
    boolean place(int chain) {
        return place(chain, 0);
    }

    /**
     * The same, but not as early as can be: so that hands stay free for another load that is at hand sooner.
     *
     * @param later how many of the times are passed over at which somebody goes from one machine straight to the other
     */
    boolean place(int chain, int later) {
        long start = earliest(chain);
        if (start == NEVER) {
            return false;
        }
        for (int passed = 0; passed < later; passed++) {
            start = fit(chain, aligned(chain, start));
        }
        Chain loads = work.chains().get(chain);
        int bank = loads.bank();
        int machine = bestMachine(chain, start);
        if (machine == firstMachine[bank] + switchedOn[bank]) {
            switchedOn[bank]++;
        }
        for (Span span : loads.hands()) {
            hands.take(start + span.from(), start + span.to());
        }
        long end = start + loads.cycle();
        slots.add(new Slot(chain, placed[chain], machine - firstMachine[bank], start, end));
        ends[chain][placed[chain]] = end;
        lastStart[chain] = start;
        lastChain[machine] = chain;
        ready[machine] = end;
        placed[chain]++;
        left[bank]--;
        return true;
    }

    /** Of those that are warm by then the one that has to change its heat the least. */
    private int bestMachine(int chain, long start) {
        int bank = work.chains().get(chain).bank();
        int best = -1;
        long least = NEVER;
        for (int machine = firstMachine[bank]; machine < usable(bank); machine++) {
            long warm = warmAt(machine, chain);
            boolean isOn = machine < firstMachine[bank] + switchedOn[bank];
            long change = isOn ? warm - ready[machine] : 0;
            if (warm <= start && change < least) {
                best = machine;
                least = change;
            }
        }
        return best;
    }

    /** Behind the last machine of a bank that can take a load: those that are on, and the next one. */
    private int usable(int bank) {
        return firstMachine[bank] + Math.min(switchedOn[bank] + 1, mostMachines[bank]);
    }

    private long warmAt(int machine, int chain) {
        Chain loads = work.chains().get(chain);
        Bank bank = work.banks().get(loads.bank());
        if (machine < firstMachine[loads.bank()] + switchedOn[loads.bank()]) {
            Chain last = work.chains().get(lastChain[machine]);
            return ready[machine] + bank.rates().secondsBetween(last.heat(), loads.heat());
        }
        long room = roomFrom(bank);
        return room == NEVER ? NEVER : room + bank.warmUp();
    }

    /** From when on the circuit of a bank carries one more of its machines, for good. */
    private long roomFrom(Bank wanted) {
        if (wanted.circuit() == Bank.NO_CIRCUIT) {
            return 0;
        }
        int free = work.circuits().get(wanted.circuit()) - work.wattsOf(wanted);
        long from = 0;
        while (from != NEVER && wattsAfter(from, wanted.circuit()) > free) {
            from = nextOff(from, wanted.circuit());
        }
        return from;
    }

    private int wattsAfter(long moment, int circuit) {
        int watts = 0;
        for (int bank = 0; bank < switchedOn.length; bank++) {
            if (work.banks().get(bank).circuit() == circuit) {
                for (int on = 0; on < switchedOn[bank]; on++) {
                    if (left[bank] > 0 || ready[firstMachine[bank] + on] > moment) {
                        watts += work.wattsOf(work.banks().get(bank));
                    }
                }
            }
        }
        return watts;
    }

    /** When the next machine of a bank without loads to come is switched off. */
    private long nextOff(long moment, int circuit) {
        long next = NEVER;
        for (int bank = 0; bank < switchedOn.length; bank++) {
            if (left[bank] == 0 && work.banks().get(bank).circuit() == circuit) {
                for (int on = 0; on < switchedOn[bank]; on++) {
                    long off = ready[firstMachine[bank] + on];
                    next = off > moment ? Math.min(next, off) : next;
                }
            }
        }
        return next;
    }

    private long notBefore(int chain) {
        Link link = next(chain);
        return link.waitsFor() < 0
                ? lastStart[chain]
                : Math.max(lastStart[chain], ends[chain][link.waitsFor()] + link.look());
    }

    /**
     * The first start after that one with which hands begin when others end, or end when others begin; or begin when a
     * machine that goes on at once with the same would be loaded again.
     */
    private long aligned(int chain, long start) {
        long next = NEVER;
        for (Span span : work.chains().get(chain).hands()) {
            next = Math.min(next, straight(start, span.from()));
            next = Math.min(next, straight(start, span.to()));
            for (int bank = 0; bank < switchedOn.length; bank++) {
                for (int on = 0; on < switchedOn[bank]; on++) {
                    long begins = loadedAgain(firstMachine[bank] + on) - span.from();
                    next = begins > start ? Math.min(next, begins) : next;
                }
            }
        }
        return next == NEVER ? start : next;
    }

    /** When a machine's next load would be in if it were like its last one and came at once. */
    private long loadedAgain(int machine) {
        List<Span> hands = work.chains().get(lastChain[machine]).hands();
        boolean beginsWithHands = !hands.isEmpty() && hands.get(0).from() == 0;
        return ready[machine] + (beginsWithHands ? hands.get(0).to() : 0);
    }

    private long straight(long start, long offset) {
        long change = hands.changeAfter(start + offset);
        return change == NEVER ? NEVER : change - offset;
    }

    /** The first time from then on at which hands are free whenever they are needed, and no break comes between. */
    private long fit(int chain, long from) {
        Chain loads = work.chains().get(chain);
        long start = from;
        long tried;
        do {
            tried = start;
            for (Span pause : work.breaks()) {
                if (start < pause.to() && start + loads.cycle() > pause.from()) {
                    start = pause.to();
                }
            }
            for (Span span : loads.hands()) {
                long until = hands.busyUntil(start + span.from(), start + span.to());
                if (until >= 0) {
                    start = until - span.from();
                }
            }
        } while (start != tried);
        return start;
    }
}
