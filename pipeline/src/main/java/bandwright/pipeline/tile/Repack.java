package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Tries to do with one sheet less: takes a sheet away, then again and again empties one to three sheets and fills them
 * anew together with what is left over, keeping what leaves less over (ruin and recreate; the goal of a fixed number of
 * sheets is from J. Gardeyn, T. Wauters, "A goal-driven ruin and recreate heuristic for the 2D variable-sized bin
 * packing problem with guillotine constraints", EJOR 301, 2022). Seeded, and limited by places looked at.
 */
final class Repack {
    private static final Board.Rule[] RULES = Board.Rule.values();
    private final Job job;
    private final Board board;
    private final SplittableRandom random;
    private final double[] area;
    private List<Layout> sheets = new ArrayList<>();
    private int[] over;
    private double overArea;
    private long shuffles;
    private int[] order = new int[64];
    private double[] keys = new double[64];

    Repack(Job job, long seed) {
        this.job = job;
        this.board = job.board();
        this.random = new SplittableRandom(seed);
        this.area = job.kinds().stream().mapToDouble(Kind::area).toArray();
        this.over = new int[area.length];
    }

    Plan improve(Plan start, int atLeast, long steps) {
        Plan best = start;
        sheets = new ArrayList<>(start.layouts());
        while (sheets.size() > Math.max(1, atLeast)) {
            dropEmptiest();
            if (!placeAll(steps)) {
                return best;
            }
            best = new Plan(
                    sheets.stream().map(layout -> new Plan.Batch(layout, 1)).toList());
        }
        return best;
    }

    private void dropEmptiest() {
        int emptiest = 0;
        for (int s = 1; s < sheets.size(); s++) {
            emptiest = filled(sheets.get(s)) < filled(sheets.get(emptiest)) ? s : emptiest;
        }
        Layout layout = sheets.remove(emptiest);
        over = layout.counts(area.length);
        overArea = filled(layout);
    }

    private double filled(Layout layout) {
        return layout.spots().stream().mapToDouble(spot -> area[spot.kind()]).sum();
    }

    private boolean placeAll(long steps) {
        while (overArea > 0 && board.steps() + shuffles < steps) {
            step();
        }
        return overArea <= 0;
    }

    private void step() {
        int many = 1 + random.nextInt(Math.min(3, sheets.size()));
        int[] picked = pick(many);
        int[] left = over.clone();
        for (int p : picked) {
            for (Layout.Spot spot : sheets.get(p).spots()) {
                left[spot.kind()]++;
            }
        }
        int length = shuffled(left);
        shuffles += 20L + 4L * length;
        Layout[] anew = new Layout[many];
        for (int i = 0; i < many; i++) {
            board.fill(order, length, left, RULES[random.nextInt(RULES.length)]);
            anew[i] = board.layout();
        }
        double leftArea = 0;
        for (int k = 0; k < left.length; k++) {
            leftArea += left[k] * area[k];
        }
        if (leftArea <= overArea) {
            for (int i = 0; i < many; i++) {
                sheets.set(picked[i], anew[i]);
            }
            over = left;
            overArea = leftArea;
        }
    }

    private int[] pick(int many) {
        int[] picked = new int[many];
        for (int i = 0; i < many; i++) {
            picked[i] = random.nextInt(sheets.size());
            for (int j = 0; j < i; j++) {
                if (picked[j] == picked[i]) {
                    i--;
                    break;
                }
            }
        }
        return picked;
    }

    /** The pieces that are off their sheets, large ones first, more or less. */
    private int shuffled(int[] left) {
        double noise = random.nextInt(4) == 0 ? 3 : random.nextDouble();
        boolean bySide = random.nextInt(3) == 0;
        int length = 0;
        for (int k = 0; k < left.length; k++) {
            double size = bySide
                    ? (double) job.kinds().get(k).longSide()
                            * job.kinds().get(k).longSide()
                    : area[k];
            for (int i = 0; i < left[k]; i++) {
                if (length == order.length) {
                    order = Arrays.copyOf(order, 2 * length);
                    keys = Arrays.copyOf(keys, 2 * length);
                }
                insert(k, size * (1 + noise * random.nextDouble()), length++);
            }
        }
        return length;
    }

    private void insert(int kind, double key, int length) {
        int at = length;
        while (at > 0 && keys[at - 1] < key) {
            keys[at] = keys[at - 1];
            order[at] = order[at - 1];
            at--;
        }
        keys[at] = key;
        order[at] = kind;
    }
}
