package bandwright.rules.colour;

/** How different two colours look: CIEDE2000 with all weights 1. 1 is hardly seen, 5 plain to see, black to white 100. */
public final class ColourDifference {
    private ColourDifference() {}

    public static double of(Lab one, Lab other) {
        return Ciede2000.between(one, other).difference();
    }
}
