package bandwright.rules.heat;

import bandwright.rules.units.Temperature;

/**
 * How fast a heat source gets from one temperature to another: 180 C to 200 C at 10 C a minute takes 120 s, back at 3 C
 * a minute 400 s.
 *
 * @param heating degrees Celsius a minute, more than 0
 * @param cooling degrees Celsius a minute, more than 0
 */
public record HeatRates(double heating, double cooling) {
    /** Our judgement: an element gains some 10 C a minute, and loses 3 C in still air. A shop with a watch knows better. */
    public static final HeatRates BUILT_IN = new HeatRates(10, 3);

    public HeatRates {
        if (!(heating > 0 && cooling > 0)) {
            throw new IllegalArgumentException("a rate that leads nowhere: " + heating + ", " + cooling);
        }
    }

    /** Whole seconds, rounded up; 0 where nothing changes. */
    public int secondsBetween(Temperature from, Temperature to) {
        double rise = to.celsius() - from.celsius();
        double minutes = rise > 0 ? rise / heating : -rise / cooling;
        // A hair less than a whole second is the division's, not the heater's.
        return (int) Math.ceil(minutes * 60 - 1e-6);
    }
}
