package bandwright.pipeline.tile;

import java.util.Arrays;

/** The maximal free rectangles of a sheet, which may overlap. Those that hold none of another stand in plain arrays. */
final class FreeRectangles {
    long[] fx0 = new long[64];
    long[] fy0 = new long[64];
    long[] fx1 = new long[64];
    long[] fy1 = new long[64];
    int count;
    private long steps;

    void clear() {
        count = 0;
    }

    /** How many places were looked at. */
    long steps() {
        return steps;
    }

    /** Every free rectangle that the span cuts is replaced by what is left of it on its four sides. */
    void cut(long x0, long y0, long x1, long y1) {
        int before = count;
        int kept = 0;
        int[] cut = new int[before];
        int cuts = 0;
        for (int f = 0; f < before; f++) {
            if (fx0[f] < x1 && x0 < fx1[f] && fy0[f] < y1 && y0 < fy1[f]) {
                cut[cuts++] = f;
            }
        }
        if (cuts == 0) {
            return;
        }
        for (int c = 0; c < cuts; c++) {
            int f = cut[c];
            long ax0 = fx0[f];
            long ay0 = fy0[f];
            long ax1 = fx1[f];
            long ay1 = fy1[f];
            if (ax0 < x0) {
                add(ax0, ay0, x0, ay1);
            }
            if (x1 < ax1) {
                add(x1, ay0, ax1, ay1);
            }
            if (ay0 < y0) {
                add(ax0, ay0, ax1, y0);
            }
            if (y1 < ay1) {
                add(ax0, y1, ax1, ay1);
            }
        }
        int next = 0;
        for (int f = 0; f < count; f++) {
            if (next < cuts && cut[next] == f) {
                next++;
            } else {
                move(f, kept++);
            }
        }
        int old = kept - (count - before);
        count = kept;
        dropContained(old);
    }

    /** The old ones contain none of each other, and no new one contains an old one: only new ones may go. */
    private void dropContained(int old) {
        steps += (long) (count - old) * count / 8;
        int kept = old;
        for (int f = old; f < count; f++) {
            if (!isContained(f, kept)) {
                move(f, kept++);
            }
        }
        count = kept;
    }

    private boolean isContained(int f, int kept) {
        for (int g = 0; g < count; g++) {
            // Between kept and f stand those that are gone already.
            boolean stands = g < kept || g > f;
            if (stands && contains(g, f) && (g < f || !contains(f, g))) {
                return true;
            }
        }
        return false;
    }

    private boolean contains(int outer, int inner) {
        return fx0[outer] <= fx0[inner]
                && fy0[outer] <= fy0[inner]
                && fx1[outer] >= fx1[inner]
                && fy1[outer] >= fy1[inner];
    }

    private void move(int from, int to) {
        fx0[to] = fx0[from];
        fy0[to] = fy0[from];
        fx1[to] = fx1[from];
        fy1[to] = fy1[from];
    }

    void add(long x0, long y0, long x1, long y1) {
        if (count == fx0.length) {
            fx0 = Arrays.copyOf(fx0, count * 2);
            fy0 = Arrays.copyOf(fy0, count * 2);
            fx1 = Arrays.copyOf(fx1, count * 2);
            fy1 = Arrays.copyOf(fy1, count * 2);
        }
        fx0[count] = x0;
        fy0[count] = y0;
        fx1[count] = x1;
        fy1[count] = y1;
        count++;
    }
}
