package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Few kinds, many copies: which layouts, and how many sheets of each. Column generation (P. Gilmore, R. Gomory, "A
 * linear programming approach to the cutting stock problem", Operations Research 9, 1961): the prices that the known
 * layouts give to the kinds show which new layout would save paper, until none does. Whole sheets are then taken off,
 * and what is left, a few sheets full, is laid piece by piece.
 */
final class Columns {
    private static final double[] ROUND_UP_FROM = {1, 0.7, 0.5, 0.3};
    private static final List<Board.Rule> RULES = List.of(Board.Rule.values());
    private static final int FILLS_A_ROUND = 24;
    private final Job job;
    private final int[] kinds;
    private final Board board;
    private final Strips strips;
    private final SplittableRandom random;
    private final List<Layout> layouts = new ArrayList<>();
    private final Master master;
    private long steps;

    Columns(Job job, Plan known, long seed) {
        this.job = job;
        this.random = new SplittableRandom(seed);
        this.kinds = IntStream.range(0, job.kinds().size())
                .filter(k -> job.kinds().get(k).copies() > 0)
                .toArray();
        this.board = job.board();
        this.strips = new Strips(job);
        int[] copies =
                Arrays.stream(kinds).map(k -> job.kinds().get(k).copies()).toArray();
        for (int kind : kinds) {
            layouts.add(alone(kind));
        }
        this.master = new Master(copies, layouts.stream().map(this::column).toList());
        known.batches().forEach(batch -> add(batch.layout()));
    }

    /** The sheet with the most copies of one kind. */
    private Layout alone(int kind) {
        int[] order =
                new int[(int) Math.max(1, job.area() / job.kinds().get(kind).area())];
        Arrays.fill(order, kind);
        Layout best = new Layout(List.of());
        for (Board.Rule rule : RULES) {
            int[] left = new int[job.kinds().size()];
            left[kind] = order.length;
            board.fill(order, order.length, left, rule);
            best = board.layout().spots().size() > best.spots().size() ? board.layout() : best;
        }
        return best;
    }

    private int[] column(Layout layout) {
        int[] counts = layout.counts(job.kinds().size());
        return Arrays.stream(kinds).map(k -> counts[k]).toArray();
    }

    private void add(Layout layout) {
        layouts.add(layout);
        master.add(column(layout));
    }

    /** The best plan found, and never more sheets than the start. */
    Plan best(Plan start, int atLeast, long most) {
        while (steps() < most) {
            steps += (long) master.solve() * kinds.length * (kinds.length + layouts.size()) / 4;
            if (Math.ceil(master.sheets() - 1e-6) <= atLeast || !addWorthwhile()) {
                break;
            }
        }
        master.solve();
        return whole(start, atLeast, most);
    }

    /** The least sheets that the layouts found can do with, were parts of sheets allowed. */
    int leastOfLayouts() {
        return (int) Math.ceil(master.sheets() - 1e-6);
    }

    private long steps() {
        return steps + board.steps();
    }

    private boolean addWorthwhile() {
        double[] prices = new double[job.kinds().size()];
        double[] some = master.prices();
        for (int i = 0; i < kinds.length; i++) {
            prices[kinds[i]] = some[i];
        }
        int before = layouts.size();
        steps += strips.stepsARound();
        strips.worthMoreThanOne(prices).forEach(this::add);
        boolean stripsDo = layouts.size() > before;
        // Free sheets last: they are dearer to find, and the prices are rough at first.
        int fills = stripsDo ? FILLS_A_ROUND / 6 : 2 * FILLS_A_ROUND;
        for (int i = 0; i < fills; i++) {
            Layout layout = filled(prices, i);
            double worth =
                    layout.spots().stream().mapToDouble(s -> prices[s.kind()]).sum();
            if (worth > 1 + 1e-6) {
                add(layout);
            }
        }
        return layouts.size() > before;
    }

    /** A sheet filled by price for the area, more or less. */
    private Layout filled(double[] prices, int n) {
        double noise = n < 4 ? 0 : 0.1 + random.nextDouble();
        double power = n < 4 ? 1 : 0.5 + random.nextDouble();
        double[] keys = new double[job.kinds().size()];
        for (int kind : kinds) {
            keys[kind] = prices[kind]
                    / Math.pow(job.kinds().get(kind).area() / job.area(), power)
                    * (1 + noise * random.nextDouble());
        }
        int[] left = new int[keys.length];
        for (int kind : kinds) {
            left[kind] = job.kinds().get(kind).copies();
        }
        int[] order = Arrays.stream(kinds)
                .boxed()
                .filter(k -> prices[k] > 0)
                .sorted(Comparator.comparingDouble((Integer k) -> -keys[k]).thenComparing(k -> k))
                .flatMapToInt(k -> IntStream.generate(() -> k).limit(copiesOf(k, n)))
                .toArray();
        board.fill(order, order.length, left, RULES.get(n % RULES.size()));
        return board.layout();
    }

    /** All that fit, or only a few so that others get their turn. */
    private int copiesOf(int kind, int n) {
        int most = (int) Math.max(
                1,
                Math.min(
                        job.kinds().get(kind).copies(),
                        job.area() / job.kinds().get(kind).area()));
        return n < 4 || n % 2 == 0 ? most : 1 + random.nextInt(most);
    }

    private Plan whole(Plan start, int atLeast, long most) {
        double[] amounts = master.amounts();
        int goal = Math.max(atLeast, leastOfLayouts());
        Plan best = start;
        for (double roundUpFrom : ROUND_UP_FROM) {
            Plan plan = rounded(amounts, roundUpFrom, goal, most / ROUND_UP_FROM.length);
            best = plan.isBetterThan(best) ? plan : best;
            if (best.sheets() <= goal) {
                break;
            }
        }
        return best;
    }

    private Plan rounded(double[] amounts, double roundUpFrom, int goal, long most) {
        int[] left = job.copies();
        List<Plan.Batch> batches = new ArrayList<>();
        for (int c = 0; c < amounts.length; c++) {
            double whole = Math.floor(amounts[c] + 1e-6);
            int sheets = (int) whole + (amounts[c] - whole >= roundUpFrom ? 1 : 0);
            takeOff(layouts.get(c), sheets, left, batches);
        }
        Job rest = job.with(left);
        Plan taken = new Plan(batches);
        int goalOfRest = Math.max(Bound.sheets(rest), goal - taken.sheets());
        Plan plan = new Greedy(rest).best(goalOfRest);
        return taken.and(new Repack(rest, 1).improve(plan, goalOfRest, most));
    }

    /** Sheets of a layout, without the copies that nobody ordered. */
    private void takeOff(Layout layout, int sheets, int[] left, List<Plan.Batch> batches) {
        int[] counts = layout.counts(left.length);
        int full = sheets;
        for (int k = 0; k < left.length; k++) {
            full = counts[k] == 0 ? full : Math.min(full, left[k] / counts[k]);
        }
        if (full > 0) {
            batches.add(new Plan.Batch(layout, full));
            for (int k = 0; k < left.length; k++) {
                left[k] -= full * counts[k];
            }
        }
        for (int i = full; i < sheets; i++) {
            List<Layout.Spot> wanted = new ArrayList<>();
            for (Layout.Spot spot : layout.spots()) {
                if (left[spot.kind()] > 0) {
                    left[spot.kind()]--;
                    wanted.add(spot);
                }
            }
            if (!wanted.isEmpty()) {
                batches.add(new Plan.Batch(new Layout(wanted), 1));
            }
        }
    }
}
