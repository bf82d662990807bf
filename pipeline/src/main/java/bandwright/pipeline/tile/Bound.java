package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongToDoubleFunction;

/**
 * The least number of sheets that any layout needs, by pictures and gaps alone. Three pictures of 60 % of a sheet each
 * need three sheets, though their areas would fill only two.
 *
 * <p>Dual feasible functions: f is usable on a length C if lengths that sum to at most C have f that sum to at most 1
 * (f is here divided by f(C)). For such f across and g along, the sum of f(w) g(h) over all pieces bounds the sheets from
 * below; the identity gives the bound by areas, which is all that pictures of cones add to. Families: S. Fekete, J. Schepers, "New classes of fast lower bounds for
 * bin packing problems", Math. Programming 91 (2001); F. Clautiaux, C. Alves, J. Valerio de Carvalho, "A survey of dual-
 * feasible and superadditive functions", Annals of OR 179 (2010).
 */
final class Bound {
    /** So many thresholds of a family are tried at most; with more sizes than that, evenly picked ones. */
    private static final int MOST_THRESHOLDS = 40;

    /** Sums of up to a hundred thousand terms near 1 are off by less. */
    private static final double ROUNDING = 1e-9;

    private Bound() {}

    static int sheets(Job job) {
        List<Kind> kinds = job.kinds().stream()
                .filter(kind -> kind.copies() > 0 && !kind.isBent())
                .toList();
        Set<Long> sides = new TreeSet<>();
        for (Kind kind : kinds) {
            sides.add(kind.longSide());
            sides.add(kind.shortSide());
        }
        double[][] across = scores(functions(job.width(), sides), kinds);
        double[][] along = scores(functions(job.height(), sides), kinds);
        double most = byAreas(job);
        for (double[] f : across) {
            for (double[] g : along) {
                most = Math.max(most, sum(job, kinds, f, g));
            }
        }
        return (int) Math.ceil(most - ROUNDING);
    }

    /**
     * Pictures of cones take no rectangles, so they count by their areas only: with half a gap round them on the field,
     * or bare on the room's inside.
     */
    private static double byAreas(Job job) {
        long gap = job.nesting().gap();
        double inside = (double) (job.width() - gap) * (job.height() - gap);
        double withGaps = 0;
        double bare = 0;
        for (Kind kind : job.kinds()) {
            withGaps += kind.area() * kind.copies();
            bare += kind.bareArea() * kind.copies();
        }
        return withGaps == 0 ? 0 : Math.max(withGaps / job.area(), bare / inside);
    }

    /** For each function f(long side), f(short side) of every kind. */
    private static double[][] scores(List<LongToDoubleFunction> functions, List<Kind> kinds) {
        double[][] scores = new double[functions.size()][2 * kinds.size()];
        for (int f = 0; f < scores.length; f++) {
            for (int k = 0; k < kinds.size(); k++) {
                scores[f][2 * k] = functions.get(f).applyAsDouble(kinds.get(k).longSide());
                scores[f][2 * k + 1] =
                        functions.get(f).applyAsDouble(kinds.get(k).shortSide());
            }
        }
        return scores;
    }

    private static double sum(Job job, List<Kind> kinds, double[] f, double[] g) {
        boolean square = job.width() == job.height();
        double sum = 0;
        for (int k = 0; k < kinds.size(); k++) {
            Kind kind = kinds.get(k);
            double lying = f[2 * k] * g[2 * k + 1];
            double standing = f[2 * k + 1] * g[2 * k];
            boolean canLie = kind.longSide() <= job.width() && kind.shortSide() <= job.height();
            boolean canStand = kind.shortSide() <= job.width() && kind.longSide() <= job.height();
            double least = canLie && canStand ? Math.min(lying, standing) : canLie ? lying : standing;
            // Any layout of a square sheet and its transpose hold every piece once lying and once standing.
            sum += kind.copies() * (square ? (lying + standing) / 2 : least);
        }
        return sum;
    }

    private static List<LongToDoubleFunction> functions(long length, Set<Long> sides) {
        List<LongToDoubleFunction> functions = new ArrayList<>();
        functions.add(x -> (double) x / length);
        Set<Long> thresholds = new TreeSet<>();
        Set<Long> roundings = new TreeSet<>();
        for (long side : sides) {
            thresholds.add(side);
            thresholds.add(length - side + 1);
            roundings.add(side);
        }
        picked(thresholds, length / 2).forEach(e -> functions.add(x -> threshold(x, e, length)));
        picked(roundings, length / 2).forEach(k -> functions.add(x -> rounding(x, k, length)));
        for (int k = 1; k <= 30; k++) {
            int parts = k;
            functions.add(x -> parts(x, parts, length));
        }
        return functions;
    }

    private static List<Long> picked(Set<Long> values, long most) {
        List<Long> all = values.stream().filter(v -> v >= 1 && v <= most).toList();
        if (all.size() <= MOST_THRESHOLDS) {
            return all;
        }
        List<Long> some = new ArrayList<>();
        for (int i = 0; i < MOST_THRESHOLDS; i++) {
            some.add(all.get((int) ((long) i * all.size() / MOST_THRESHOLDS)));
        }
        return some;
    }

    /** What is longer than C - e leaves no room for anything of e or more, so it counts whole and the small nothing. */
    static double threshold(long x, long e, long length) {
        if (x > length - e) {
            return 1;
        }
        return x < e ? 0 : (double) x / length;
    }

    /** Lengths in whole multiples of k; what is longer than a half counts by what it leaves. */
    static double rounding(long x, long k, long length) {
        long whole = length / k;
        if (2 * x > length) {
            long leaves = (length - x) / k;
            return (double) (whole - leaves) / whole;
        }
        long fits = x / k;
        return 2 * x == length ? 0.5 : (double) fits / whole;
    }

    /** Lengths in (k + 1)-ths of C, rounded down to k-ths. */
    static double parts(long x, int k, long length) {
        long scaled = (k + 1) * x;
        long reached = scaled / length;
        return scaled % length == 0 ? (double) x / length : (double) reached / k;
    }
}
