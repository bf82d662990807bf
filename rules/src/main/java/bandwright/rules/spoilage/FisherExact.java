package bandwright.rules.spoilage;

/**
 * Whether two ways of making differ, or only chance does: Fisher's exact test of two by two counts, two-sided. Of 60
 * pieces 6 spoiled and of 60 others 2: as far apart or farther in 27 of 100 cases even if both ways are alike.
 */
public final class FisherExact {
    /** Chances below this count as a difference. [J] */
    public static final double CERTAIN = 0.05;
    /** Tables as improbable as the one that was found count, though their last digits may differ. */
    private static final double SAME = 1 + 1e-7;

    private FisherExact() {}

    /**
     * The sum of the probabilities of all tables with the same sums that are no more probable than this one.
     *
     * @param seen pieces of the one way
     * @param spoiled of these
     * @param others pieces of the other way
     * @param othersSpoiled of these
     */
    public static double chance(int seen, int spoiled, int others, int othersSpoiled) {
        if (spoiled < 0 || spoiled > seen || othersSpoiled < 0 || othersSpoiled > others) {
            throw new IllegalArgumentException(spoiled + "/" + seen + ", " + othersSpoiled + "/" + others);
        }
        long bad = (long) spoiled + othersSpoiled;
        int fewest = (int) Math.max(0, bad - others);
        int most = (int) Math.min(seen, bad);
        double[] logs = new double[most - fewest + 1];
        double greatest = 0;
        // Hypergeometric distribution, each term from the one before it, the first one taken as 1.
        for (int k = fewest + 1; k <= most; k++) {
            double ratio = (double) (bad - k + 1) / k * (seen - k + 1.0) / (others - bad + k);
            logs[k - fewest] = logs[k - 1 - fewest] + StrictMath.log(ratio);
            greatest = Math.max(greatest, logs[k - fewest]);
        }
        double all = 0;
        double extreme = 0;
        double found = StrictMath.exp(logs[spoiled - fewest] - greatest);
        for (double log : logs) {
            double probability = StrictMath.exp(log - greatest);
            all += probability;
            extreme += probability <= found * SAME ? probability : 0;
        }
        return Math.min(1, extreme / all);
    }
}
