package bandwright.rules.colour;

/**
 * How much light a channel of an sRGB colour stands for: 128 of 255 is 0.215861 of white's light, not half of it.
 * IEC 61966-2-1, with the constants as the sample code of W3C CSS Color Module Level 4 has them.
 */
public final class LinearLight {
    private static final double[] OF = new double[256];

    static {
        for (int i = 0; i < OF.length; i++) {
            OF[i] = decoded(i / 255.0);
        }
    }

    private LinearLight() {}

    /** The light of a channel of 0 to 255; 0 to 1. */
    public static double of(int channel) {
        return OF[channel];
    }

    /** The channel, rounded to the nearest, that stands for that much light. */
    public static int channel(double light) {
        return (int) Math.round(255 * encoded(light));
    }

    static double decoded(double value) {
        return value <= 0.04045 ? value / 12.92 : StrictMath.pow((value + 0.055) / 1.055, 2.4);
    }

    static double encoded(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * StrictMath.pow(light, 1 / 2.4) - 0.055;
    }
}
