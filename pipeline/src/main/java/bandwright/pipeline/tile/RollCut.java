package bandwright.pipeline.tile;

import bandwright.rules.Shop;
import bandwright.rules.paper.Footprint;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.paper.Roll;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How short the pages of a roll become. The plan is made for pages of the greatest length, so their number is what it is
 * for sheets; then what lies on each page is laid again on a page half way between what it takes and what it takes at
 * least, and again, as long as that finds a shorter one. At last each page is cut where what lies on it ends.
 *
 * @param law of the longest page
 * @param job on the longest page
 */
record RollCut(PoseLaw law, Shop shop, Job job) {
    /** Trials over all pages of a run; few long pages get more of them each. */
    private static final int TRIALS = 240;

    private static final int MOST_TRIALS_A_PAGE = 16;
    private static final int LEAST_TRIALS_A_PAGE = 3;

    /** Places looked at in a trial at most. */
    private static final long MOST_STEPS = 600_000;

    private static final long STEPS_A_PIECE = 10_000;

    /** A page that is a millimetre shorter is not looked for. */
    private static final Length WORTH_WHILE = Length.mm(1);

    List<Sheet> pages(Plan plan, Dealing dealing) {
        return dealing.sheets(shortened(plan)).stream().map(this::cut).toList();
    }

    /** The same pictures on as many pages, each page as short as was found. */
    private Plan shortened(Plan plan) {
        Map<Layout, Integer> pages = exact(plan);
        int trials = Math.max(LEAST_TRIALS_A_PAGE, Math.min(MOST_TRIALS_A_PAGE, TRIALS / Math.max(1, pages.size())));
        List<Plan.Batch> batches = new ArrayList<>();
        pages.forEach((layout, count) -> batches.add(new Plan.Batch(shortest(layout, trials), count)));
        return new Plan(batches);
    }

    /** A plan may lay more copies than there are; a page that is shorter without them shows only without them. */
    private Map<Layout, Integer> exact(Plan plan) {
        int[] left = job.copies();
        Map<Layout, Integer> pages = new LinkedHashMap<>();
        for (Layout layout : plan.layouts()) {
            List<Layout.Spot> spots = new ArrayList<>();
            for (Layout.Spot spot : layout.spots()) {
                if (left[spot.kind()]-- > 0) {
                    spots.add(spot);
                }
            }
            if (!spots.isEmpty()) {
                pages.merge(new Layout(spots), 1, Integer::sum);
            }
        }
        return pages;
    }

    private Layout shortest(Layout layout, int trials) {
        int[] copies = layout.counts(job.kinds().size());
        Optional<Layout> rows = Rows.of(job, copies);
        Layout best =
                rows.filter(plain -> length(layout).longerThan(length(plain))).orElse(layout);
        Length high = length(best);
        Length low = atLeast(copies);
        for (int trial = 0; trial < trials && high.minus(low).longerThan(WORTH_WHILE); trial++) {
            Length middle = Roll.whole(low.plus(high).half());
            Optional<Layout> found = laid(copies, law.room().cutAfter(middle));
            if (found.isPresent() && !length(found.get()).longerThan(middle)) {
                best = found.get();
                high = length(best);
            } else {
                low = middle;
            }
        }
        return best;
    }

    /** All those copies on one page of that room, told by the poses of the longest page; empty where not found. */
    private Optional<Layout> laid(int[] copies, PaperRoom room) {
        PoseLaw shorter = PoseLaw.of(room, shop);
        List<Kind> kinds = new ArrayList<>();
        int pieces = 0;
        for (int k = 0; k < copies.length; k++) {
            Kind kind = job.kinds().get(k);
            List<Pose> poses = Pose.of(kind.pattern(), shorter);
            boolean isAlike = !poses.isEmpty() && poses.get(0).flagged() == flagged(kind);
            if (copies[k] > 0 && !isAlike) {
                return Optional.empty();
            }
            kinds.add(new Kind(kind.pattern(), isAlike ? poses : kind.poses(), copies[k]));
            pieces += copies[k];
        }
        Job one = new Job(shorter.fieldWidth(), shorter.fieldHeight(), kinds, job.edgeToEdge(), job.nesting());
        Plan plan = Search.best(one, 1, Math.min(MOST_STEPS, STEPS_A_PIECE * pieces));
        return plan.sheets() == 1 ? retold(plan.layouts().get(0), kinds, copies) : Optional.empty();
    }

    private static boolean flagged(Kind kind) {
        return kind.poses().get(0).flagged();
    }

    /** The same layout by the poses of the longest page, which takes every turn that a shorter one does. */
    private Optional<Layout> retold(Layout layout, List<Kind> kinds, int[] copies) {
        int[] left = copies.clone();
        List<Layout.Spot> spots = new ArrayList<>();
        for (Layout.Spot spot : layout.spots()) {
            if (left[spot.kind()]-- > 0) {
                Rotation turn = kinds.get(spot.kind()).poses().get(spot.pose()).rotation();
                spots.add(new Layout.Spot(spot.kind(), pose(spot.kind(), turn), spot.x(), spot.y()));
            }
        }
        boolean isWhole = spots.size() == Arrays.stream(copies).sum();
        return isWhole ? Optional.of(new Layout(spots)) : Optional.empty();
    }

    private int pose(int kind, Rotation turn) {
        List<Pose> poses = job.kinds().get(kind).poses();
        for (int p = 0; p < poses.size(); p++) {
            if (poses.get(p).rotation() == turn) {
                return p;
            }
        }
        throw new IllegalStateException("a longer page does not take " + turn);
    }

    /** No page that holds those copies is shorter: their area on the field's width, and the least that each takes alone. */
    private Length atLeast(int[] copies) {
        double area = 0;
        long tallest = 0;
        for (int k = 0; k < copies.length; k++) {
            if (copies[k] > 0) {
                Kind kind = job.kinds().get(k);
                area += kind.area() * copies[k];
                long least = kind.poses().stream().mapToLong(Pose::height).min().orElseThrow();
                tallest = Math.max(tallest, least);
            }
        }
        long field = Math.max(tallest, (long) (area / job.width()));
        return page(law.room().inside().y().plus(new Length(field - law.gap())));
    }

    /** Where a page that is laid out like that can be cut off. */
    private Length length(Layout layout) {
        Length length = Length.ZERO;
        for (Layout.Spot spot : layout.spots()) {
            Kind kind = job.kinds().get(spot.kind());
            Pose pose = kind.poses().get(spot.pose());
            Length y = law.room().inside().y().plus(new Length(spot.y()));
            length = length.atLeast(length(kind.pattern(), pose.rotation(), y, pose.flagged()));
        }
        return length;
    }

    private Sheet cut(Sheet sheet) {
        Length length = Length.ZERO;
        for (Placed placed : sheet.placed()) {
            FlatPattern pattern = FlatPattern.of(placed.unit().transfer());
            Length y = placed.box().y();
            length = length.atLeast(
                    length(pattern, placed.rotation(), y, placed.flag().isPresent()));
        }
        return new Sheet(sheet.room().cutAfter(length), sheet.placed());
    }

    /** The shortest page for a picture that high up: it and its flag's ink below the margin, the flag's paper on it. */
    private Length length(FlatPattern pattern, Rotation rotation, Length y, boolean flagged) {
        Footprint footprint = law.footprint(pattern, rotation);
        Length ink = footprint.picture().top();
        Length paper = Length.ZERO;
        if (flagged) {
            ink = footprint.ink().map(Box::top).orElse(ink).atLeast(ink);
            paper = footprint.flag().map(Box::top).orElse(paper);
        }
        return page(y.plus(ink)).atLeast(Roll.whole(y.plus(paper)));
    }

    private Length page(Length top) {
        Paper roll = law.room().paper();
        Printer printer = law.room().printer();
        return Roll.page(roll, printer, top).atMost(Roll.longest(roll));
    }
}
