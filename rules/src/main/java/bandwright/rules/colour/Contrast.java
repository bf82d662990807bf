package bandwright.rules.colour;

import bandwright.rules.units.Rgb;

/**
 * How well a colour stands out from another by its light alone: the contrast ratio of the Web Content Accessibility
 * Guidelines 2.x (W3C Recommendation WCAG 2.2, "contrast ratio" and "relative luminance"). Black on white is 21, a colour on
 * itself 1.
 */
public final class Contrast {
    /** The light that falls on a page from all about it, as the guidelines reckon it. */
    private static final double FLARE = 0.05;

    private Contrast() {}

    public static double ratio(Rgb one, Rgb other) {
        return ratio(luminance(one), luminance(other));
    }

    /** Of two luminances, in either order. */
    public static double ratio(double one, double other) {
        return (Math.max(one, other) + FLARE) / (Math.min(one, other) + FLARE);
    }

    /** Relative luminance: 0 is black, 1 is white. */
    public static double luminance(Rgb colour) {
        return luminance(LinearLight.of(colour.red()), LinearLight.of(colour.green()), LinearLight.of(colour.blue()));
    }

    /** The same of linear light, 0 to 1 a channel. */
    public static double luminance(double red, double green, double blue) {
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    }
}
