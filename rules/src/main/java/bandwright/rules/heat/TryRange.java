package bandwright.rules.heat;

import bandwright.rules.table.Evidence;
import bandwright.rules.units.Temperature;
import bandwright.rules.units.TemperatureUnit;

/**
 * How hot and how long a blank may be tried, from the row of press-settings.csv that counts for it. Ceramic in a mug
 * press: 180 to 200 C, usually 190, and 150 to 240 s, usually 180. Where a row names no end, half the width of the trade's
 * usual ranges is taken for it; but a supplier's listing is never left: what it doesn't give a range for is not varied.
 */
public record TryRange(
        Temperature least,
        Temperature usual,
        Temperature most,
        int leastSeconds,
        int usualSeconds,
        int mostSeconds,
        boolean isListed) {
    /** Degrees Celsius to either side where a row names no end. [J] */
    static final double SPREAD = 10;

    /** The share of the time to either side where a row names no end. [J] */
    static final double TIME_SPREAD = 0.25;

    /** A spread of times ends at whole steps of that many seconds. */
    private static final int SPREAD_STEP = 5;

    /** A whole degree may lie on an end in spite of the last digit of its conversion. */
    private static final double HAIR = 1e-6;

    public TryRange {
        if (least.compareTo(usual) > 0 || usual.compareTo(most) > 0) {
            throw new IllegalArgumentException("not a range: " + least + ", " + usual + ", " + most);
        }
        if (leastSeconds > usualSeconds || usualSeconds > mostSeconds || leastSeconds <= 0) {
            throw new IllegalArgumentException(
                    "not a range: " + leastSeconds + ", " + usualSeconds + ", " + mostSeconds);
        }
    }

    /**
     * The range of a row that allows its pieces.
     *
     * @throws IllegalArgumentException if it has no temperature or time
     */
    public static TryRange of(PressSetting setting) {
        Temperature usual = setting.temperature().orElseThrow(() -> new IllegalArgumentException("no temperature"));
        int seconds = setting.timeSeconds();
        boolean isListed = setting.evidence() == Evidence.SUPPLIER_LISTING;
        double spread = isListed ? 0 : SPREAD;
        double share = isListed ? 0 : TIME_SPREAD;
        UsualRange range = setting.range();
        double least = range.leastTemperature().map(Temperature::celsius).orElse(usual.celsius() - spread);
        double most = range.mostTemperature().map(Temperature::celsius).orElse(usual.celsius() + spread);
        return new TryRange(
                Temperature.celsius(Math.min(least, usual.celsius())),
                usual,
                Temperature.celsius(Math.max(most, usual.celsius())),
                range.leastSeconds().orElse(seconds - spreadSeconds(seconds, share)),
                seconds,
                range.mostSeconds().orElse(seconds + spreadSeconds(seconds, share)),
                isListed);
    }

    private static int spreadSeconds(int seconds, double share) {
        int steps = (int) (seconds * share / SPREAD_STEP);
        return steps * SPREAD_STEP;
    }

    /** Whole degrees as a machine is set, never outside of the range if a whole degree lies in it. */
    public int whole(Temperature temperature, TemperatureUnit unit) {
        double low = Math.ceil(degrees(least, unit) - HAIR);
        double high = Math.floor(degrees(most, unit) + HAIR);
        double nearest = Math.round(degrees(temperature, unit));
        return (int) (low > high ? nearest : Math.max(low, Math.min(high, nearest)));
    }

    private static double degrees(Temperature temperature, TemperatureUnit unit) {
        return unit == TemperatureUnit.F ? temperature.fahrenheit() : temperature.celsius();
    }
}
