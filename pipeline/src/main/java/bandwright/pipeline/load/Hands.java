package bandwright.pipeline.load;

import java.util.Arrays;

/**
 * How many people are at work at which time: steps between moments, in seconds of the day. One thing at a time for each
 * of them.
 */
final class Hands {
    private final int people;
    private int steps = 1;
    private long[] from = new long[64];
    private int[] busy = new int[64];

    Hands(int people) {
        this.people = people;
        from[0] = Long.MIN_VALUE;
    }

    /** When the first time that all hands are full ends again, between two moments; -1 = there is always a free pair. */
    long busyUntil(long start, long end) {
        for (int i = step(start); i < steps && from[i] < end; i++) {
            if (busy[i] >= people) {
                return from[i + 1];
            }
        }
        return -1;
    }

    /** The first moment after that one at which hands become busy or free; {@link Long#MAX_VALUE} = none. */
    long changeAfter(long moment) {
        int next = step(moment) + 1;
        return next < steps ? from[next] : Long.MAX_VALUE;
    }

    void take(long start, long end) {
        int first = cut(start);
        int last = cut(end);
        for (int i = first; i < last; i++) {
            busy[i]++;
        }
    }

    /** The step that holds that moment. */
    private int step(long moment) {
        int found = Arrays.binarySearch(from, 0, steps, moment);
        return found >= 0 ? found : -found - 2;
    }

    /** Makes a step begin at that moment. */
    private int cut(long moment) {
        int at = step(moment);
        if (from[at] == moment) {
            return at;
        }
        if (steps == from.length) {
            from = Arrays.copyOf(from, 2 * steps);
            busy = Arrays.copyOf(busy, 2 * steps);
        }
        System.arraycopy(from, at + 1, from, at + 2, steps - at - 1);
        System.arraycopy(busy, at + 1, busy, at + 2, steps - at - 1);
        from[at + 1] = moment;
        busy[at + 1] = busy[at];
        steps++;
        return at + 1;
    }
}
