package bandwright.rules.heat;

/** An electrical circuit of the shop: a row of circuits.csv. */
public record Circuit(String id, double volts, double amperes, String note) {
    // NEC 210.19(A)(1), 210.20(A): a continuous load counts with 125 % against conductors and breaker, hence 80 %.
    private static final double CONTINUOUS = 0.8;

    /** What may draw on it at the same time, in whole watts: 1920 on 120 V and 20 A. */
    public int mostWatts() {
        // A hair less than a whole watt is the multiplication's.
        return (int) Math.floor(volts * amperes * CONTINUOUS + 1e-6);
    }
}
