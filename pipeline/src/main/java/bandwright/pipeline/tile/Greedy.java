package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Sheets filled one after the other, largest pieces first: quick, and good where every piece is of another size. Several
 * orders and rules are tried and the best kept. A layout is repeated while copies last, which is what filling sheet by
 * sheet would give.
 */
final class Greedy {
    private static final List<Comparator<Kind>> ORDERS = List.of(
            Comparator.comparingDouble(Kind::area).reversed(),
            Comparator.comparingLong(Kind::longSide)
                    .thenComparingLong(Kind::shortSide)
                    .reversed(),
            Comparator.comparingLong(Kind::shortSide)
                    .thenComparingLong(Kind::longSide)
                    .reversed(),
            Comparator.comparingLong((Kind kind) -> kind.longSide() + kind.shortSide())
                    .reversed(),
            Comparator.comparingDouble(Kind::footArea).reversed());

    private final Job job;
    private final Board board;

    Greedy(Job job) {
        this.job = job;
        this.board = job.board();
    }

    /** The best plan of all orders and rules; stops early at the bound. */
    Plan best(int atLeast) {
        Plan best = plan(ORDERS.get(0), Board.Rule.SHORT_SIDE);
        for (Comparator<Kind> order : ORDERS) {
            for (Board.Rule rule : Board.Rule.values()) {
                if (best.sheets() <= atLeast) {
                    return best;
                }
                Plan plan = plan(order, rule);
                best = plan.isBetterThan(best) ? plan : best;
            }
        }
        return best;
    }

    private Plan plan(Comparator<Kind> comparator, Board.Rule rule) {
        int[] order = IntStream.range(0, job.kinds().size())
                .boxed()
                .sorted(Comparator.comparing((Integer k) -> job.kinds().get(k), comparator)
                        .thenComparing(k -> k))
                .flatMapToInt(kind -> IntStream.generate(() -> kind).limit(mostOnASheet(kind)))
                .toArray();
        int[] left = job.copies();
        List<Plan.Batch> batches = new ArrayList<>();
        while (board.fill(order, order.length, left, rule) > 0) {
            Layout layout = board.layout();
            int[] counts = layout.counts(left.length);
            int more = repeats(left, counts);
            for (int k = 0; k < left.length; k++) {
                left[k] -= more * counts[k];
            }
            batches.add(new Plan.Batch(layout, 1 + more));
        }
        return new Plan(batches);
    }

    private int mostOnASheet(int kind) {
        Kind of = job.kinds().get(kind);
        return (int) Math.min(of.copies(), Math.max(1, job.area() / of.area()));
    }

    private static int repeats(int[] left, int[] counts) {
        int repeats = Integer.MAX_VALUE;
        for (int k = 0; k < left.length; k++) {
            repeats = counts[k] == 0 ? repeats : Math.min(repeats, left[k] / counts[k]);
        }
        return repeats;
    }
}
