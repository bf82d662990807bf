package bandwright.rules.stock;

/**
 * How many spare blanks to carry to the press, so that 19 days out of 20 nobody walks back to the shelf. 40 pieces at a
 * spoil rate of 3 %: 3 spares, as at least 40 of 43 turn out good with a probability of 96 %, and of 42 only with 87 %.
 */
public final class Spares {
    /** The share of days on which the spares shall do. [J] */
    private static final double ENOUGH = 0.95;
    /** A press that ruins more than this needs mending, not more blanks; and the sum must end. [J] */
    private static final double WORST_RATE = 0.9;

    private Spares() {}

    /**
     * The smallest s with P(at least n good of n + s) >= 95 %. The n-th good piece comes after k spoiled ones with the
     * probability C(n - 1 + k, k) p^k (1 - p)^n (negative binomial distribution), so s is where their sum reaches 95 %.
     *
     * @param spoilRate the share of pieces that are ruined, 0 to 1; above 90 % counts as 90 %
     */
    public static int of(int pieces, double spoilRate) {
        if (pieces < 0 || !(spoilRate >= 0 && spoilRate <= 1)) {
            throw new IllegalArgumentException(pieces + " pieces at a spoil rate of " + spoilRate);
        }
        if (pieces == 0 || spoilRate == 0) {
            return 0;
        }
        double rate = Math.min(spoilRate, WORST_RATE);
        // As logarithms: (1 - p)^n of many pieces is less than a double can hold. StrictMath: alike on every machine.
        double logRate = StrictMath.log(rate);
        double logTerm = pieces * StrictMath.log1p(-rate);
        double sum = StrictMath.exp(logTerm);
        int spoiled = 0;
        while (sum < ENOUGH) {
            spoiled++;
            logTerm += logRate + StrictMath.log((pieces - 1.0 + spoiled) / spoiled);
            sum += StrictMath.exp(logTerm);
        }
        return spoiled;
    }
}
