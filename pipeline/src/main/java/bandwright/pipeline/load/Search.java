package bandwright.pipeline.load;

import bandwright.pipeline.load.Timetable.Slot;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Looks for the day that ends soonest. A day is the order in which loads get their times: a few that are known to be good
 * come first, then loads are moved, swapped and held back in the best one. Limited by a count of loads placed, never by the clock,
 * so that the same work has the same plan anywhere.
 */
final class Search {
    /** A day is left as it is when so many changes in a row made it no better; the search goes on from the best one. */
    private static final int PATIENCE = 300;

    /** A load that leaves hands to another one passes over so many times at most. */
    private static final int MOST_PASSED = 3;

    /** So many changes at once lead away from a day that can't be bettered by one. */
    private static final int MOST_SHAKES = 8;

    /** So many of the first loads are tried a little later. */
    private static final int MOST_HELD_BACK = 4;

    /** A day's plan, and how it was come by. */
    record Found(List<Slot> slots, Merit merit) {}

    /** A day as it is changed, and what comes of it. */
    private static final class Day {
        /** Chains, each plus as many times the number of chains as its load passes over starts. */
        private final int[] order;
        /** How many of each bank may be switched on. */
        private final int[] machines;

        private final Found found;

        private Day(int[] order, int[] machines, Found found) {
            this.order = order;
            this.machines = machines;
            this.found = found;
        }
    }

    private final Work work;
    private final int loads;
    private final int chains;
    /** The banks of which fewer machines than there are may be better, as others share their circuit. */
    private final List<Integer> choices;

    private final SplittableRandom random = new SplittableRandom(8191);
    private long most = Long.MAX_VALUE;

    private Search(Work work) {
        this.work = work;
        this.loads = work.loads();
        this.chains = work.chains().size();
        this.choices = IntStream.range(0, work.banks().size())
                .filter(bank -> work.wattsOf(work.banks().get(bank)) > 0)
                .filter(bank -> work.banks().get(bank).machines() > 1)
                .boxed()
                .toList();
    }

    /**
     * A day that is no longer than plain list scheduling makes it.
     *
     * @param placings how many loads may be given a time in all
     */
    static Found best(Work work, int placings) {
        return new Search(work).best(placings);
    }

    private Found best(int placings) {
        int[] machines = work.banks().stream().mapToInt(Work.Bank::machines).toArray();
        Day best = day(Dispatch.AS_THEY_CAN_START, machines);
        most = best.found.merit().end();
        for (Dispatch dispatch : Dispatch.values()) {
            best = better(best, day(dispatch, machines));
            for (int bank : choices) {
                int[] fewer = machines.clone();
                fewer[bank] = 1;
                best = better(best, day(dispatch, fewer));
            }
        }
        return loads < 2 ? best.found : improved(heldBack(best), placings / loads);
    }

    /** A machine that begins a little later may stay out of the others' way all day. */
    private Day heldBack(Day start) {
        Day best = start;
        for (int i = 0; i < Math.min(loads, MOST_HELD_BACK); i++) {
            for (int passed = 1; passed <= MOST_PASSED; passed++) {
                int[] order = start.order.clone();
                order[i] = order[i] % chains + chains * passed;
                best = better(best, day(order, start.machines));
            }
        }
        return best;
    }

    private Found improved(Day start, int days) {
        Day best = start;
        Day at = start;
        int idle = 0;
        int patience = Math.min(PATIENCE, 20 * loads);
        for (int i = 0; i < days; i++) {
            Day next =
                    isForMachines() ? day(at.order, otherMachines(at.machines)) : day(changed(at.order), at.machines);
            if (next.found.merit().compareTo(at.found.merit()) <= 0) {
                at = next;
            }
            idle++;
            if (at.found.merit().compareTo(best.found.merit()) < 0) {
                best = at;
                idle = 0;
            }
            if (idle > patience) {
                at = shaken(best);
                idle = 0;
            }
        }
        return best.found;
    }

    /** The best day some changes further, wherever that leads. */
    private Day shaken(Day best) {
        int[] order = best.order;
        for (int changes = 2 + random.nextInt(Math.min(loads, MOST_SHAKES)); changes > 0; changes--) {
            order = changed(order);
        }
        return day(order, best.machines);
    }

    private static Day better(Day one, Day other) {
        return other.found.merit().compareTo(one.found.merit()) < 0 ? other : one;
    }

    private boolean isForMachines() {
        return !choices.isEmpty() && random.nextInt(8) == 0;
    }

    private int[] otherMachines(int[] machines) {
        int[] other = machines.clone();
        int bank = choices.get(random.nextInt(choices.size()));
        other[bank] = 1 + random.nextInt(work.banks().get(bank).machines());
        return other;
    }

    /** One load moved elsewhere, two swapped, or some that stand together moved. */
    private int[] changed(int[] order) {
        int[] changed = Arrays.copyOf(order, loads);
        int from = random.nextInt(loads);
        int to = random.nextInt(loads);
        int kind = random.nextInt(3);

        if (random.nextInt(loads) < 2) {
            changed[from] = order[from] % chains + chains * random.nextInt(MOST_PASSED + 1);
        } else if (kind == 0) {
            changed[from] = order[to];
            changed[to] = order[from];
        } else {
            move(changed, from, to, kind == 1 ? 1 : 1 + random.nextInt((loads + 1) / 2));
        }
        return changed;
    }

    private static void move(int[] order, int from, int to, int many) {
        int count = Math.min(many, order.length - Math.max(from, to));
        int[] moved = Arrays.copyOfRange(order, from, from + count);
        if (from < to) {
            System.arraycopy(order, from + count, order, from, to - from);
        } else {
            System.arraycopy(order, to, order, to + count, from - to);
        }
        System.arraycopy(moved, 0, order, to, count);
    }

    private Day day(Dispatch dispatch, int[] machines) {
        return day(dispatch.order(work, machines), machines);
    }

    private Day day(int[] order, int[] machines) {
        Timetable day = new Timetable(work, machines);
        Deque<Integer> waiting = new ArrayDeque<>();
        for (int next : order) {
            if (!day.place(next % chains, next / chains)) {
                waiting.add(next);
            } else if (day.isDone(next % chains)) {
                placeWaiting(day, waiting);
            }
        }
        while (!waiting.isEmpty()) {
            placeWaiting(day, waiting);
        }
        return new Day(order, machines, new Found(day.slots(), Merit.of(work, day.slots(), most)));
    }

    /** Those whose circuit had no room when it was their turn. */
    private void placeWaiting(Timetable day, Deque<Integer> waiting) {
        for (int i = waiting.size(); i > 0; i--) {
            int next = waiting.remove();
            if (!day.place(next % chains, next / chains)) {
                waiting.add(next);
            }
        }
    }
}
