package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A sheet that is cut with scissors: pictures lie anywhere. Keeps the maximal free rectangles, which may overlap
 * (J. Jylanki, "A thousand ways to pack the bin", 2010). A picture goes into a corner of one of them; its flag may hang
 * anywhere that nothing else takes, also over the margin, so flags lie in the hollows that pictures leave.
 */
final class FreeBoard implements Board {
    private final Job job;
    private final Pose[][] poses;
    private long[] fx0 = new long[64];
    private long[] fy0 = new long[64];
    private long[] fx1 = new long[64];
    private long[] fy1 = new long[64];
    private int free;
    private long[] tx0 = new long[64];
    private long[] ty0 = new long[64];
    private long[] tx1 = new long[64];
    private long[] ty1 = new long[64];
    private int taken;
    private final List<Layout.Spot> spots = new ArrayList<>();
    private Rule rule = Rule.SHORT_SIDE;
    private long steps;

    private long bestFirst;
    private long bestSecond;
    private int bestPose;
    private long bestX;
    private long bestY;

    FreeBoard(Job job) {
        this.job = job;
        this.poses = job.kinds().stream()
                .map(kind -> kind.poses().toArray(new Pose[0]))
                .toArray(Pose[][]::new);
    }

    @Override
    public void clear(Rule newRule) {
        // A sheet costs something before anything is laid on it.
        steps += 20;
        rule = newRule;
        taken = 0;
        free = 0;
        addFree(0, 0, job.width(), job.height());
        spots.clear();
    }

    @Override
    public Layout layout() {
        return new Layout(spots);
    }

    @Override
    public long steps() {
        return steps;
    }

    @Override
    public boolean place(int kind) {
        steps += 5;
        bestPose = -1;
        bestFirst = Long.MAX_VALUE;
        bestSecond = Long.MAX_VALUE;
        for (int p = 0; p < poses[kind].length; p++) {
            Pose pose = poses[kind][p];
            steps += free;
            for (int f = 0; f < free; f++) {
                if (fx1[f] - fx0[f] >= pose.width() && fy1[f] - fy0[f] >= pose.height()) {
                    tryFree(p, pose, f);
                }
            }
        }
        if (bestPose < 0) {
            return false;
        }
        take(kind, poses[kind][bestPose]);
        return true;
    }

    private void take(int kind, Pose pose) {
        spots.add(new Layout.Spot(kind, bestPose, bestX, bestY));
        takeSpan(bestX, bestY, bestX + pose.width(), bestY + pose.height());
        if (pose.flagged()) {
            Span flag = pose.flag();
            takeSpan(bestX + flag.x0(), bestY + flag.y0(), bestX + flag.x1(), bestY + flag.y1());
        }
    }

    private void tryFree(int p, Pose pose, int f) {
        Span corner = pose.corner();
        long x0 = Math.max(fx0[f], corner.x0());
        long x1 = Math.min(fx1[f] - pose.width(), corner.x1());
        long y0 = Math.max(fy0[f], corner.y0());
        long y1 = Math.min(fy1[f] - pose.height(), corner.y1());
        if (x1 < x0 || y1 < y0) {
            return;
        }
        steps += 2;
        if (!pose.flagged()) {
            consider(p, pose, f, x0, y0);
            return;
        }
        for (int c = 0; c < 4; c++) {
            long x = (c & 1) == 0 ? x0 : x1;
            long y = (c & 2) == 0 ? y0 : y1;
            if (((c & 1) != 0 && x1 == x0) || ((c & 2) != 0 && y1 == y0)) {
                continue;
            }
            int hit = hit(pose, x, y);
            if (hit < 0) {
                consider(p, pose, f, x, y);
            } else {
                slide(p, pose, f, new Span(x0, y0, x1, y1), x, y, hit);
            }
        }
    }

    /** The flag hits something in this corner: the nearest places where it passes by on one of the four sides. */
    private void slide(int p, Pose pose, int f, Span range, long x, long y, int hit) {
        Span flag = pose.flag();
        slideTo(p, pose, f, range, x, ty1[hit] - flag.y0());
        slideTo(p, pose, f, range, x, ty0[hit] - flag.y1());
        slideTo(p, pose, f, range, tx1[hit] - flag.x0(), y);
        slideTo(p, pose, f, range, tx0[hit] - flag.x1(), y);
    }

    private void slideTo(int p, Pose pose, int f, Span range, long x, long y) {
        if (x >= range.x0() && x <= range.x1() && y >= range.y0() && y <= range.y1() && hit(pose, x, y) < 0) {
            consider(p, pose, f, x, y);
        }
    }

    /** The first taken span that the flag would overlap; -1 where it hangs free. */
    private int hit(Pose pose, long x, long y) {
        Span flag = pose.flag();
        long x0 = x + flag.x0();
        long y0 = y + flag.y0();
        long x1 = x + flag.x1();
        long y1 = y + flag.y1();
        steps += taken / 4 + 1;
        for (int t = 0; t < taken; t++) {
            if (tx0[t] < x1 && x0 < tx1[t] && ty0[t] < y1 && y0 < ty1[t]) {
                return t;
            }
        }
        return -1;
    }

    private void consider(int p, Pose pose, int f, long x, long y) {
        long wide = fx1[f] - fx0[f] - pose.width();
        long high = fy1[f] - fy0[f] - pose.height();
        long first =
                switch (rule) {
                    case SHORT_SIDE -> Math.min(wide, high);
                    // Square micrometres, as square nanometres of a large sheet overflow.
                    case AREA -> (fx1[f] - fx0[f]) / 1000 * ((fy1[f] - fy0[f]) / 1000);
                    case BOTTOM_LEFT -> y + pose.height();
                    case CONTACT -> -contact(pose, x, y);
                };
        if (first > bestFirst) {
            return;
        }
        long second =
                switch (rule) {
                    case SHORT_SIDE, CONTACT -> Math.max(wide, high);
                    case AREA -> Math.min(wide, high);
                    case BOTTOM_LEFT -> x;
                };
        if (pose.flagged()) {
            second += flagOnField(pose, x, y);
        }
        if (first < bestFirst || second < bestSecond) {
            bestFirst = first;
            bestSecond = second;
            bestPose = p;
            bestX = x;
            bestY = y;
        }
    }

    /** How much of the flag lies where pictures could: its depth and height on the field. */
    private long flagOnField(Pose pose, long x, long y) {
        Span flag = pose.flag();
        long wide = Math.min(job.width(), x + flag.x1()) - Math.max(0, x + flag.x0());
        long high = Math.min(job.height(), y + flag.y1()) - Math.max(0, y + flag.y0());
        return wide <= 0 || high <= 0 ? 0 : wide + high;
    }

    private long contact(Pose pose, long x, long y) {
        long sum = touching(x, y, x + pose.width(), y + pose.height());
        if (pose.flagged()) {
            Span flag = pose.flag();
            sum += touching(x + flag.x0(), y + flag.y0(), x + flag.x1(), y + flag.y1());
            sum -= flagOnField(pose, x, y) / 2;
        }
        return sum;
    }

    private long touching(long x0, long y0, long x1, long y1) {
        long sum = 0;
        if (x0 <= 0 || x1 >= job.width()) {
            sum += y1 - y0;
        }
        if (y0 <= 0 || y1 >= job.height()) {
            sum += x1 - x0;
        }
        steps += taken / 4 + 1;
        for (int t = 0; t < taken; t++) {
            if (tx0[t] == x1 || tx1[t] == x0) {
                sum += Math.max(0, Math.min(y1, ty1[t]) - Math.max(y0, ty0[t]));
            }
            if (ty0[t] == y1 || ty1[t] == y0) {
                sum += Math.max(0, Math.min(x1, tx1[t]) - Math.max(x0, tx0[t]));
            }
        }
        return sum;
    }

    private void takeSpan(long x0, long y0, long x1, long y1) {
        if (taken == tx0.length) {
            tx0 = Arrays.copyOf(tx0, taken * 2);
            ty0 = Arrays.copyOf(ty0, taken * 2);
            tx1 = Arrays.copyOf(tx1, taken * 2);
            ty1 = Arrays.copyOf(ty1, taken * 2);
        }
        tx0[taken] = x0;
        ty0[taken] = y0;
        tx1[taken] = x1;
        ty1[taken] = y1;
        taken++;
        split(x0, y0, x1, y1);
    }

    /** Every free rectangle that the span cuts is replaced by what is left of it on its four sides. */
    private void split(long x0, long y0, long x1, long y1) {
        int before = free;
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
                addFree(ax0, ay0, x0, ay1);
            }
            if (x1 < ax1) {
                addFree(x1, ay0, ax1, ay1);
            }
            if (ay0 < y0) {
                addFree(ax0, ay0, ax1, y0);
            }
            if (y1 < ay1) {
                addFree(ax0, y1, ax1, ay1);
            }
        }
        int next = 0;
        for (int f = 0; f < free; f++) {
            if (next < cuts && cut[next] == f) {
                next++;
            } else {
                move(f, kept++);
            }
        }
        int old = kept - (free - before);
        free = kept;
        dropContained(old);
    }

    /** The old ones contain none of each other, and no new one contains an old one: only new ones may go. */
    private void dropContained(int old) {
        steps += (long) (free - old) * free / 8;
        int kept = old;
        for (int f = old; f < free; f++) {
            if (!isContained(f, kept)) {
                move(f, kept++);
            }
        }
        free = kept;
    }

    private boolean isContained(int f, int kept) {
        for (int g = 0; g < free; g++) {
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

    private void addFree(long x0, long y0, long x1, long y1) {
        if (free == fx0.length) {
            fx0 = Arrays.copyOf(fx0, free * 2);
            fy0 = Arrays.copyOf(fy0, free * 2);
            fx1 = Arrays.copyOf(fx1, free * 2);
            fy1 = Arrays.copyOf(fy1, free * 2);
        }
        fx0[free] = x0;
        fy0[free] = y0;
        fx1[free] = x1;
        fy1[free] = y1;
        free++;
    }
}
