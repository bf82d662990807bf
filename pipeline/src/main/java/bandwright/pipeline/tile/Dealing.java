package bandwright.pipeline.tile;

import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Which unit lies where, and in which order the sheets come: pictures of one size are interchangeable, so those of early
 * loads are dealt to early sheets, and who presses in load order walks through the sheets from the first to the last.
 */
final class Dealing {
    private final PaperRoom room;
    private final Job job;
    private final PoseLaw law;
    private final List<Deque<Waiting>> queues = new ArrayList<>();

    /**
     * @param waiting for each kind its units in load order
     */
    Dealing(PaperRoom room, Job job, PoseLaw law, List<List<Waiting>> waiting) {
        this.room = room;
        this.job = job;
        this.law = law;
        waiting.forEach(units -> queues.add(new ArrayDeque<>(units)));
    }

    List<Sheet> sheets(Plan plan) {
        List<Plan.Batch> left = new ArrayList<>(plan.batches());
        List<Sheet> sheets = new ArrayList<>();
        while (!left.isEmpty()) {
            int next = next(left);
            Plan.Batch batch = left.get(next);
            deal(batch.layout()).ifPresent(sheets::add);
            if (batch.sheets() > 1) {
                left.set(next, new Plan.Batch(batch.layout(), batch.sheets() - 1));
            } else {
                left.remove(next);
            }
        }
        return sheets;
    }

    /** Of the layouts that hold the earliest unit, the one whose last unit comes earliest. */
    private int next(List<Plan.Batch> left) {
        int earliest = earliestKind();
        int best = 0;
        int bestLast = Integer.MAX_VALUE;
        for (int b = 0; b < left.size(); b++) {
            int last = lastRank(left.get(b).layout(), earliest);
            if (last < bestLast) {
                best = b;
                bestLast = last;
            }
        }
        return best;
    }

    private int earliestKind() {
        int earliest = -1;
        for (int k = 0; k < queues.size(); k++) {
            Waiting first = queues.get(k).peekFirst();
            Waiting before = earliest < 0 ? null : queues.get(earliest).peekFirst();
            if (first != null && (before == null || first.rank() < before.rank())) {
                earliest = k;
            }
        }
        return earliest;
    }

    private int lastRank(Layout layout, int mustHold) {
        int last = -1;
        boolean holds = false;
        for (Layout.Spot spot : layout.spots()) {
            holds |= spot.kind() == mustHold;
            Waiting first = queues.get(spot.kind()).peekFirst();
            last = first == null ? last : Math.max(last, first.rank());
        }
        return holds ? last : Integer.MAX_VALUE;
    }

    private Optional<Sheet> deal(Layout layout) {
        record Dealt(Waiting waiting, Layout.Spot spot) {}
        List<Dealt> dealt = new ArrayList<>();
        for (Layout.Spot spot : layout.spots()) {
            Waiting first = queues.get(spot.kind()).pollFirst();
            if (first != null) {
                dealt.add(new Dealt(first, spot));
            }
        }
        dealt.sort(Comparator.comparingInt(d -> d.waiting().rank()));
        List<Placed> placed =
                dealt.stream().map(d -> placed(d.waiting(), d.spot())).toList();
        return placed.isEmpty() ? Optional.empty() : Optional.of(new Sheet(room, placed));
    }

    private Placed placed(Waiting waiting, Layout.Spot spot) {
        Kind kind = job.kinds().get(spot.kind());
        Pose pose = kind.poses().get(spot.pose());
        boolean swaps = pose.rotation().swapsSides();
        Length across = swaps ? kind.height() : kind.width();
        Length along = swaps ? kind.width() : kind.height();
        Length x = room.inside().x().plus(new Length(spot.x()));
        Length y = room.inside().y().plus(new Length(spot.y()));
        Box box = new Box(x, y, across, along);
        Optional<Box> flag = pose.flagged()
                ? law.footprint(kind.pattern(), pose.rotation()).flag().map(paper -> paper.shifted(x, y))
                : Optional.empty();
        return new Placed(waiting.unit(), waiting.load(), box, pose.rotation(), flag);
    }
}
