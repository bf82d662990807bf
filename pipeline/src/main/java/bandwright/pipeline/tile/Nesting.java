package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How pictures of cones lie in each other's hollows: for two of them, turned each its way, the places next to the first
 * where the second keeps just the gap though their boxes overlap. Two equal sectors one above the other need less than
 * their boxes do: sqrt(R^2 - r^2 sin^2 a) - r cos a from one to the next, where the lower end of an inner arc meets the
 * outer arc below (a is half the angle).
 */
final class Nesting {
    /** How finely a place is found, in nanometres. */
    private static final long FINE = 10_000;

    private static final long COARSE = 3_000_000;

    /** A place that saves less than that is none. */
    private static final long WORTH_WHILE = 500_000;

    private static final double NM_PER_MM = 1_000_000;

    private final long gapNanometres;
    private final double gap;
    private final Map<Pair, List<Offset>> offsets = new HashMap<>();
    private final Map<Placing, Boolean> clear = new HashMap<>();

    /**
     * @param gap in nanometres
     */
    Nesting(long gap) {
        this.gapNanometres = gap;
        this.gap = gap / NM_PER_MM;
    }

    /** In nanometres. */
    long gap() {
        return gapNanometres;
    }

    /** From one picture's lower-left corner to another's. */
    record Offset(long dx, long dy) {}

    private record Pair(BentShape one, BentShape other) {}

    private record Placing(BentShape one, BentShape other, long dx, long dy) {}

    boolean isClear(BentShape one, BentShape other, long dx, long dy) {
        if (isFar(one, other, dx, dy)) {
            return true;
        }
        return clear.computeIfAbsent(
                new Placing(one, other, dx, dy), any -> one.isClearOf(other, dx / NM_PER_MM, dy / NM_PER_MM, gap));
    }

    private boolean isFar(BentShape one, BentShape other, long dx, long dy) {
        double x = dx / NM_PER_MM;
        double y = dy / NM_PER_MM;
        return x >= one.width() + gap
                || y >= one.height() + gap
                || -x >= other.width() + gap
                || -y >= other.height() + gap;
    }

    /** Places of the other beside the one, in a fixed order. */
    List<Offset> offsets(BentShape one, BentShape other) {
        return offsets.computeIfAbsent(new Pair(one, other), any -> find(one, other));
    }

    private List<Offset> find(BentShape one, BentShape other) {
        List<Offset> found = new ArrayList<>();
        long right = nm(one.width() + gap);
        long left = -nm(other.width() + gap);
        long top = nm(one.height() + gap);
        long bottom = -nm(other.height() + gap);
        for (long dx : alignments(one.width(), other.width())) {
            slide(found, one, other, dx, top, 0, -1);
            slide(found, one, other, dx, bottom, 0, 1);
        }
        for (long dy : alignments(one.height(), other.height())) {
            slide(found, one, other, right, dy, -1, 0);
            slide(found, one, other, left, dy, 1, 0);
        }
        return List.copyOf(found);
    }

    /** Middles, lower ends or upper ends in line. */
    private static List<Long> alignments(double one, double other) {
        long middle = nm((one - other) / 2);
        return Math.abs(middle) < FINE ? List.of(middle) : List.of(middle, 0L, 2 * middle);
    }

    private static long nm(double mm) {
        return (long) Math.ceil(mm * NM_PER_MM);
    }

    /** Moves the other towards the one from where their boxes are apart, as long as it stays clear. */
    private void slide(List<Offset> found, BentShape one, BentShape other, long dx, long dy, int stepX, int stepY) {
        long most =
                nm((stepX == 0 ? Math.max(one.height(), other.height()) : Math.max(one.width(), other.width())) + gap);
        long done = 0;
        for (long step = COARSE; step >= FINE; step /= 2) {
            while (done + step <= most
                    && isClearAt(one, other, dx + stepX * (done + step), dy + stepY * (done + step))) {
                done += step;
            }
        }
        if (done >= WORTH_WHILE) {
            found.add(new Offset(dx + stepX * done, dy + stepY * done));
        }
    }

    private boolean isClearAt(BentShape one, BentShape other, long dx, long dy) {
        return one.isClearOf(other, dx / NM_PER_MM, dy / NM_PER_MM, gap);
    }
}
