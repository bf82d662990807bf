package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A sheet that is cut with scissors: pictures lie anywhere. Keeps the maximal free rectangles, which may overlap
 * (J. Jylanki, "A thousand ways to pack the bin", 2010). A picture goes into a corner of one of them; its flag may hang
 * anywhere that nothing else takes, also over the margin, so flags lie in the hollows that pictures leave.
 */
final class FreeBoard implements Board {
    private final Job job;
    private final Pose[][] poses;
    private final FreeRectangles free = new FreeRectangles();
    private final Nesting nesting;
    private long[] tx0 = new long[64];
    private long[] ty0 = new long[64];
    private long[] tx1 = new long[64];
    private long[] ty1 = new long[64];
    /** Whether a taken span stands for a part of a cone's picture, which other cones' pictures ask more exactly about. */
    private boolean[] bent = new boolean[64];

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
        this.nesting = job.nesting();
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
        free.clear();
        free.add(0, 0, job.width(), job.height());
        spots.clear();
    }

    @Override
    public Layout layout() {
        return new Layout(spots);
    }

    @Override
    public long steps() {
        return steps + free.steps();
    }

    @Override
    public boolean place(int kind) {
        steps += 5;
        bestPose = -1;
        bestFirst = Long.MAX_VALUE;
        bestSecond = Long.MAX_VALUE;
        for (int p = 0; p < poses[kind].length; p++) {
            Pose pose = poses[kind][p];
            steps += free.count;
            for (int f = 0; f < free.count; f++) {
                if (free.fx1[f] - free.fx0[f] >= pose.width() && free.fy1[f] - free.fy0[f] >= pose.height()) {
                    tryFree(p, pose, f);
                }
            }
        }
        if (job.kinds().get(kind).isBent()) {
            tryHollows(kind);
        }
        if (bestPose < 0) {
            return false;
        }
        take(kind, poses[kind][bestPose]);
        return true;
    }

    /** Places in the hollows of cones' pictures that lie here already. */
    private void tryHollows(int kind) {
        for (Layout.Spot spot : spots) {
            Optional<BentShape> lying = poses[spot.kind()][spot.pose()].bent();
            if (lying.isEmpty()) {
                continue;
            }
            for (int p = 0; p < poses[kind].length; p++) {
                Pose pose = poses[kind][p];
                BentShape shape = pose.bent().orElseThrow();
                for (Nesting.Offset offset : nesting.offsets(lying.get(), shape)) {
                    long x = spot.x() + offset.dx();
                    long y = spot.y() + offset.dy();
                    steps += 10;
                    if (isWithin(pose.corner(), x, y) && isFree(pose, shape, x, y)) {
                        considerHollow(p, pose, x, y);
                    }
                }
            }
        }
    }

    private static boolean isWithin(Span corner, long x, long y) {
        return x >= corner.x0() && x <= corner.x1() && y >= corner.y0() && y <= corner.y1();
    }

    private boolean isFree(Pose pose, BentShape shape, long x, long y) {
        for (Layout.Spot spot : spots) {
            Optional<BentShape> other = poses[spot.kind()][spot.pose()].bent();
            steps += 4;
            if (other.isPresent() && !nesting.isClear(other.get(), shape, x - spot.x(), y - spot.y())) {
                return false;
            }
        }
        for (Span span : shape.spans()) {
            if (isTaken(span, x, y)) {
                return false;
            }
        }
        return !pose.flagged() || hit(pose, x, y) < 0;
    }

    /** Whether a part of a cone's picture would lie on anything but cones' pictures. */
    private boolean isTaken(Span part, long x, long y) {
        steps += taken / 4 + 1;
        for (int t = 0; t < taken; t++) {
            if (!bent[t]
                    && tx0[t] < x + part.x1()
                    && x + part.x0() < tx1[t]
                    && ty0[t] < y + part.y1()
                    && y + part.y0() < ty1[t]) {
                return true;
            }
        }
        return false;
    }

    /** A hollow is better than free paper, but for the rule that keeps low. */
    private void considerHollow(int p, Pose pose, long x, long y) {
        long first =
                switch (rule) {
                    case SHORT_SIDE, AREA, CONTACT -> Long.MIN_VALUE;
                    case BOTTOM_LEFT -> y + pose.height();
                };
        choose(p, x, y, first, pose.flagged() ? x + y + flagOnField(pose, x, y) : x + y);
    }

    private void take(int kind, Pose pose) {
        spots.add(new Layout.Spot(kind, bestPose, bestX, bestY));
        if (pose.bent().isPresent()) {
            pose.bent().get().spans().forEach(part -> takeSpan(part, true));
        } else {
            takeSpan(new Span(0, 0, pose.width(), pose.height()), false);
        }
        if (pose.flagged()) {
            takeSpan(pose.flag(), false);
        }
    }

    private void tryFree(int p, Pose pose, int f) {
        Span corner = pose.corner();
        long x0 = Math.max(free.fx0[f], corner.x0());
        long x1 = Math.min(free.fx1[f] - pose.width(), corner.x1());
        long y0 = Math.max(free.fy0[f], corner.y0());
        long y1 = Math.min(free.fy1[f] - pose.height(), corner.y1());
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
        long wide = free.fx1[f] - free.fx0[f] - pose.width();
        long high = free.fy1[f] - free.fy0[f] - pose.height();
        long first =
                switch (rule) {
                    case SHORT_SIDE -> Math.min(wide, high);
                    // Square micrometres, as square nanometres of a large sheet overflow.
                    case AREA -> (free.fx1[f] - free.fx0[f]) / 1000 * ((free.fy1[f] - free.fy0[f]) / 1000);
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
        choose(p, x, y, first, second);
    }

    private void choose(int p, long x, long y, long first, long second) {
        if (first < bestFirst || (first == bestFirst && second < bestSecond)) {
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

    /** What lies at the chosen place, counted from there. */
    private void takeSpan(Span part, boolean isBent) {
        if (taken == tx0.length) {
            tx0 = Arrays.copyOf(tx0, taken * 2);
            ty0 = Arrays.copyOf(ty0, taken * 2);
            tx1 = Arrays.copyOf(tx1, taken * 2);
            ty1 = Arrays.copyOf(ty1, taken * 2);
            bent = Arrays.copyOf(bent, taken * 2);
        }
        tx0[taken] = bestX + part.x0();
        ty0[taken] = bestY + part.y0();
        tx1[taken] = bestX + part.x1();
        ty1[taken] = bestY + part.y1();
        bent[taken] = isBent;
        free.cut(tx0[taken], ty0[taken], tx1[taken], ty1[taken]);
        taken++;
    }
}
