package bandwright.pipeline.load;

import bandwright.pipeline.load.Timetable.Slot;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Looks for the day that ends soonest. A day is the order in which loads get their times: a few that are known to be good
 * come first, then loads are moved and swapped in the best one. Limited by a count of loads placed, never by the clock,
 * so that the same work has the same plan anywhere.
 */
final class Search {
    /** A day is left as it is when so many changes in a row made it no better; the search goes on from the best one. */
    private static final int PATIENCE = 300;

    /** A day's plan, and how it was come by. */
    record Found(List<Slot> slots, Merit merit) {}

    private record Day(int[] order, int[] machines, Found found) {}

    private final Work work;
    private final int loads;
    private final SplittableRandom random = new SplittableRandom(8191);
    private long most = Long.MAX_VALUE;

    private Search(Work work) {
        this.work = work;
        this.loads = work.loads();
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
        most = best.found().merit().end();
        for (Dispatch dispatch : Dispatch.values()) {
            best = better(best, day(dispatch, machines));
        }
        return loads < 2 ? best.found() : improved(best, placings / loads);
    }

    private Found improved(Day start, int days) {
        Day best = start;
        Day at = start;
        int idle = 0;
        for (int i = 0; i < days; i++) {
            Day next = day(changed(at.order()), at.machines());
            if (next.found().merit().compareTo(at.found().merit()) <= 0) {
                at = next;
            }
            idle++;
            if (at.found().merit().compareTo(best.found().merit()) < 0) {
                best = at;
                idle = 0;
            }
            if (idle > PATIENCE) {
                at = best;
                idle = 0;
            }
        }
        return best.found();
    }

    private static Day better(Day one, Day other) {
        return other.found().merit().compareTo(one.found().merit()) < 0 ? other : one;
    }

    /** One load moved elsewhere, two swapped, or some that stand together moved. */
    private int[] changed(int[] order) {
        int[] changed = Arrays.copyOf(order, loads);
        int from = random.nextInt(loads);
        int to = random.nextInt(loads);
        int kind = random.nextInt(3);

        if (kind == 0) {
            changed[from] = order[to];
            changed[to] = order[from];
        } else {
            move(changed, from, to, kind == 1 ? 1 : 1 + random.nextInt(Math.max(1, loads / 4)));
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
        for (int chain : order) {
            if (!day.place(chain)) {
                waiting.add(chain);
            } else if (day.isDone(chain)) {
                placeWaiting(day, waiting);
            }
        }
        while (!waiting.isEmpty()) {
            placeWaiting(day, waiting);
        }
        return new Day(order, machines, new Found(day.slots(), Merit.of(work, day.slots(), most)));
    }

    /** Those whose circuit had no room when it was their turn. */
    private static void placeWaiting(Timetable day, Deque<Integer> waiting) {
        for (int i = waiting.size(); i > 0; i--) {
            int chain = waiting.remove();
            if (!day.place(chain)) {
                waiting.add(chain);
            }
        }
    }
}
