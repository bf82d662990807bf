package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet that is cut edge to edge on a trimmer: picture, border and flag are one rectangle, and every free rectangle is
 * cut in two when something is laid into its corner.
 */
final class CutBoard implements Board {
    private final Job job;
    private final List<Span> free = new ArrayList<>();
    private final List<Layout.Spot> spots = new ArrayList<>();
    private Rule rule = Rule.SHORT_SIDE;
    private long steps;

    CutBoard(Job job) {
        this.job = job;
    }

    @Override
    public void clear(Rule newRule) {
        // A sheet costs something before anything is laid on it.
        steps += 20;
        rule = newRule;
        free.clear();
        free.add(new Span(0, 0, job.width(), job.height()));
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
        List<Pose> poses = job.kinds().get(kind).poses();
        long best = Long.MAX_VALUE;
        int bestPose = -1;
        int bestFree = -1;
        for (int p = 0; p < poses.size(); p++) {
            Span foot = poses.get(p).foot();
            steps += free.size();
            for (int f = 0; f < free.size(); f++) {
                long wide = free.get(f).width() - foot.width();
                long high = free.get(f).height() - foot.height();
                if (wide >= 0 && high >= 0 && score(free.get(f), wide, high) < best) {
                    best = score(free.get(f), wide, high);
                    bestPose = p;
                    bestFree = f;
                }
            }
        }
        if (bestPose < 0) {
            return false;
        }
        Span into = free.remove(bestFree);
        Span foot = poses.get(bestPose).foot();
        spots.add(new Layout.Spot(kind, bestPose, into.x0() - foot.x0(), into.y0() - foot.y0()));
        cut(into, foot);
        return true;
    }

    private long score(Span into, long wide, long high) {
        return switch (rule) {
            case SHORT_SIDE, BOTTOM_LEFT -> Math.min(wide, high);
            // Square micrometres, as square nanometres of a large sheet overflow.
            case AREA, CONTACT -> into.width() / 1000 * (into.height() / 1000);
        };
    }

    /** Cuts off what is left to the right and above; the first cut decides which of the two is the longer. */
    private void cut(Span into, Span foot) {
        long x = into.x0() + foot.width();
        long y = into.y0() + foot.height();
        long wide = into.x1() - x;
        long high = into.y1() - y;
        boolean acrossFirst =
                switch (rule) {
                    case SHORT_SIDE -> wide <= high;
                    case AREA -> wide > high;
                    case BOTTOM_LEFT, CONTACT -> (double) wide * foot.height() <= (double) high * foot.width();
                };
        add(new Span(x, into.y0(), into.x1(), acrossFirst ? y : into.y1()));
        add(new Span(into.x0(), y, acrossFirst ? into.x1() : x, into.y1()));
    }

    private void add(Span left) {
        if (left.width() > 0 && left.height() > 0) {
            free.add(left);
        }
    }
}
