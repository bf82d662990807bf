package bandwright.rules.spoilage;

/**
 * The beta distribution of a share: what is known of it after a spoiled and b good pieces. Beta(2, 3) lies below 0.25
 * with a probability of 0.2617.
 *
 * <p>Below the mean by the series of the incomplete beta function whose terms are all positive (NIST Digital Library of
 * Mathematical Functions, 8.17.7 and 8.17.8), above it by 8.17.4. That both parts make one at the mean gives the constant
 * in front, so no gamma function is needed.
 */
record Beta(double a, double b) {
    /** Halving an interval of 1 so often leaves less than a double can tell. */
    private static final int HALVINGS = 60;

    Beta {
        if (!(a > 0 && b > 0)) {
            throw new IllegalArgumentException("Beta(" + a + ", " + b + ")");
        }
    }

    /** The probability of a share up to x. */
    double below(double x) {
        if (x <= 0 || x >= 1) {
            return x <= 0 ? 0 : 1;
        }
        double mean = a / (a + b);
        double whole = series(a, b, mean) + series(b, a, 1 - mean);
        double front = StrictMath.exp(a * StrictMath.log(x / mean) + b * StrictMath.log((1 - x) / (1 - mean)));
        return x <= mean ? front * series(a, b, x) / whole : 1 - front * series(b, a, 1 - x) / whole;
    }

    /** F(a + b, 1; a + 1; x) / a. */
    private static double series(double a, double b, double x) {
        double term = 1 / a;
        double sum = term;
        for (int n = 0; term > sum * 1e-17; n++) {
            term *= (a + b + n) / (a + 1 + n) * x;
            sum += term;
        }
        return sum;
    }

    /** The share below which it lies with that probability. */
    double quantile(double probability) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (below(middle) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
