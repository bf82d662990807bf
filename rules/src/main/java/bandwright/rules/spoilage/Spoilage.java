package bandwright.rules.spoilage;

/**
 * How many pieces are ruined of those begun. At first what the shop says; once its own pieces of that blank in that heat
 * source are {@value #ENOUGH} or more, they are weighed with it: 4 spoiled of 120 at a spoil rate of 3 % are 3.3 %, and
 * between 1.1 % and 6.6 % with a probability of 95 %.
 *
 * <p>What the shop says counts as much as {@value #ENOUGH} pieces of its own (a beta prior of that weight), so that both
 * count alike when the ledger is first asked, and hundreds of pieces leave little of it. [J]
 *
 * @param shopRate a share, 0 to 1
 * @param seen own pieces; 0 where they are too few to count
 * @param spoiled of these
 */
public record Spoilage(double shopRate, int seen, int spoiled) {
    /** So many pieces the ledger must have seen. [J] */
    public static final int ENOUGH = 30;
    /** A press that ruins more than this needs mending, not more blanks; and sums must end. [J] */
    private static final double WORST_RATE = 0.9;
    /** What lies outside of the interval, on each side. [J] */
    private static final double OUTSIDE = 0.025;

    /** From one share to another, both possible. */
    public record Interval(double from, double to) {}

    public Spoilage {
        if (!(shopRate >= 0 && shopRate <= 1) || spoiled < 0 || spoiled > seen) {
            throw new IllegalArgumentException(spoiled + " of " + seen + " at a spoil rate of " + shopRate);
        }
        boolean isEnough = seen >= ENOUGH;
        spoiled = isEnough ? spoiled : 0;
        seen = isEnough ? seen : 0;
    }

    /** What the shop says, as long as nothing is learnt. */
    public static Spoilage asSaid(double shopRate) {
        return new Spoilage(shopRate, 0, 0);
    }

    /** Whether the shop's own pieces speak. */
    public boolean isLearnt() {
        return seen > 0;
    }

    /** The share to be expected. */
    public double rate() {
        return isLearnt() ? bad() / (bad() + good()) : shopRate;
    }

    /** Where the share lies with a probability of 95 %; of what is only said, that share. */
    public Interval interval() {
        if (!isLearnt() || bad() == 0) {
            return new Interval(rate(), rate());
        }
        Beta share = new Beta(bad(), good());
        return new Interval(share.quantile(OUTSIDE), share.quantile(1 - OUTSIDE));
    }

    private double said() {
        return Math.min(shopRate, WORST_RATE);
    }

    /** The beta distribution's first figure: spoiled pieces, the shop's word counted in. */
    private double bad() {
        return ENOUGH * said() + spoiled;
    }

    /** Its second figure: good pieces. */
    private double good() {
        return ENOUGH * (1 - said()) + seen - spoiled;
    }

    /**
     * The logarithm of the probability that n good pieces come without a spoiled one among them. At a known rate
     * (1 - p)^n; where the rate is beta distributed the product of (good + i) / (bad + good + i), i below n.
     */
    public double logNoneSpoiled(int n) {
        if (!isLearnt()) {
            return n * StrictMath.log1p(-said());
        }
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += StrictMath.log1p(-bad() / (bad() + good() + i));
        }
        return sum;
    }

    /**
     * How much more probable k spoiled pieces before the n-th good one are than k - 1: at a known rate p (n - 1 + k) / k
     * (negative binomial distribution), else with (bad + k - 1) / (bad + good + n + k - 1) for p (beta negative binomial
     * distribution).
     */
    public double step(int n, int k) {
        double p = isLearnt() ? (bad() + k - 1) / (bad() + good() + n + k - 1) : said();
        return p * ((n - 1.0 + k) / k);
    }
}
