package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The most valuable sheet that two rounds of edge to edge cuts can make when every kind has a price: first the best row
 * for every height of row, then the best pile of rows (two knapsacks: P. Gilmore, R. Gomory, "Multistage cutting stock
 * problems of two and more dimensions", Operations Research 13, 1965). Both directions of the first cut are tried.
 */
final class Strips {
    /** Lengths are counted in the largest unit that divides them all, but in no more than so many units a sheet. */
    private static final int MOST_UNITS = 4000;

    /** A way to lay a piece in a row; length and height in nanometres and in units. */
    private record Way(int kind, int pose, long length, long height, int units, int tall) {}

    /** Rows along one direction. */
    private record Direction(boolean turned, List<Way> ways, int along, int across) {}

    private final Job job;
    private final List<Direction> directions;

    Strips(Job job) {
        this.job = job;
        this.directions = List.of(direction(false), direction(true));
    }

    /** The best sheet of each direction that is worth more than one. */
    List<Layout> worthMoreThanOne(double[] prices) {
        List<Layout> found = new ArrayList<>();
        for (Direction direction : directions) {
            best(direction, prices, found);
        }
        return found;
    }

    long stepsARound() {
        long steps = 0;
        for (Direction direction : directions) {
            steps += (long) direction.ways().size() * (direction.along() + direction.across()) / 4;
        }
        return steps;
    }

    private Direction direction(boolean turned) {
        long unit = unit();
        List<Way> ways = new ArrayList<>();
        for (int k = 0; k < job.kinds().size(); k++) {
            List<Pose> poses =
                    job.kinds().get(k).copies() > 0 ? job.kinds().get(k).poses() : List.of();
            for (int p = 0; p < poses.size(); p++) {
                Span foot = poses.get(p).foot();
                long length = turned ? foot.height() : foot.width();
                long height = turned ? foot.width() : foot.height();
                Way way = new Way(k, p, length, height, upInUnits(length, unit), upInUnits(height, unit));
                if (ways.stream().noneMatch(other -> isAlike(way, other))) {
                    ways.add(way);
                }
            }
        }
        ways.sort(Comparator.comparingInt(Way::tall).thenComparingInt(Way::kind));
        long along = turned ? job.height() : job.width();
        long across = turned ? job.width() : job.height();
        return new Direction(turned, List.copyOf(ways), (int) (along / unit), (int) (across / unit));
    }

    private static boolean isAlike(Way way, Way other) {
        return way.kind() == other.kind() && way.length() == other.length() && way.height() == other.height();
    }

    private static int upInUnits(long length, long unit) {
        return (int) ((length + unit - 1) / unit);
    }

    private long unit() {
        long divisor = 0;
        for (Kind kind : job.kinds()) {
            for (Pose pose : kind.poses()) {
                divisor = divisor(
                        divisor(divisor, pose.foot().width()), pose.foot().height());
            }
        }
        long least = (Math.max(job.width(), job.height()) + MOST_UNITS - 1) / MOST_UNITS;
        return Math.max(divisor, least);
    }

    private static long divisor(long a, long b) {
        return b == 0 ? a : divisor(b, a % b);
    }

    private void best(Direction direction, double[] prices, List<Layout> found) {
        List<Way> ways = direction.ways();
        double[] row = new double[direction.along() + 1];
        int[] unused = new int[direction.along() + 1];
        double[] pile = new double[direction.across() + 1];
        int[] rows = none(direction.across());
        for (int w = 0; w < ways.size(); w++) {
            Way way = ways.get(w);
            add(row, way.units(), prices[way.kind()], unused, w);
            boolean lastOfHeight = w + 1 == ways.size() || ways.get(w + 1).tall() > way.tall();
            if (lastOfHeight) {
                add(pile, way.tall(), row[direction.along()], rows, w);
            }
        }
        if (pile[direction.across()] > 1 + 1e-6) {
            found.add(layout(direction, prices, rows));
        }
    }

    /** Any number of pieces of that length and worth may go into the knapsack, too. */
    private static void add(double[] knapsack, int length, double worth, int[] last, int which) {
        if (worth <= 0) {
            return;
        }
        for (int at = length; at < knapsack.length; at++) {
            double with = knapsack[at - length] + worth;
            if (with > knapsack[at] + 1e-12) {
                knapsack[at] = with;
                last[at] = which;
            } else if (knapsack[at] < knapsack[at - 1]) {
                knapsack[at] = knapsack[at - 1];
                last[at] = -1;
            }
        }
    }

    private static int[] none(int length) {
        int[] none = new int[length + 1];
        Arrays.fill(none, -1);
        return none;
    }

    private Layout layout(Direction direction, double[] prices, int[] rows) {
        List<Layout.Spot> spots = new ArrayList<>();
        long across = 0;
        int at = rows.length - 1;
        while (at > 0) {
            if (rows[at] < 0) {
                at--;
                continue;
            }
            Way tallest = direction.ways().get(rows[at]);
            across += layRow(direction, prices, tallest.tall(), across, spots);
            at -= tallest.tall();
        }
        return new Layout(spots);
    }

    /** Lays the best row of pieces no taller than that; returns how high it is. */
    private long layRow(Direction direction, double[] prices, int tall, long across, List<Layout.Spot> spots) {
        double[] row = new double[direction.along() + 1];
        int[] last = none(direction.along());
        List<Way> ways = direction.ways();
        for (int w = 0; w < ways.size() && ways.get(w).tall() <= tall; w++) {
            add(row, ways.get(w).units(), prices[ways.get(w).kind()], last, w);
        }
        long along = 0;
        long high = 0;
        int at = direction.along();
        while (at > 0) {
            if (last[at] < 0) {
                at--;
                continue;
            }
            Way way = ways.get(last[at]);
            Span foot = job.kinds().get(way.kind()).poses().get(way.pose()).foot();
            long x = direction.turned() ? across : along;
            long y = direction.turned() ? along : across;
            spots.add(new Layout.Spot(way.kind(), way.pose(), x - foot.x0(), y - foot.y0()));
            along += way.length();
            high = Math.max(high, way.height());
            at -= way.units();
        }
        return high;
    }
}
