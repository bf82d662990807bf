package bandwright.rules.colour;

import bandwright.rules.units.Rgb;

/**
 * A colour by how light it is (L, 0 to 100), how red or green (a) and how yellow or blue (b), so that equal distances look
 * about equally large: CIELAB (ISO/CIE 11664-4) of a colour of sRGB, whose own white (D65) is exactly 100, 0, 0. Red is
 * 53.24, 80.09, 67.20.
 */
public record Lab(double l, double a, double b) {
    /** sRGB to XYZ (IEC 61966-2-1, D65), to seven digits as colour libraries publish it. */
    private static final double[] X = {0.4124564, 0.3575761, 0.1804375};

    private static final double[] Y = {0.2126729, 0.7151522, 0.0721750};
    private static final double[] Z = {0.0193339, 0.1191920, 0.9503041};

    /** White is what the matrix makes of red, green and blue in full. */
    private static final double WHITE_X = row(X, 1, 1, 1);

    private static final double WHITE_Y = row(Y, 1, 1, 1);
    private static final double WHITE_Z = row(Z, 1, 1, 1);

    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    public static Lab of(Rgb colour) {
        return ofLight(LinearLight.of(colour.red()), LinearLight.of(colour.green()), LinearLight.of(colour.blue()));
    }

    /** Of linear light, 0 to 1 a channel. */
    public static Lab ofLight(double red, double green, double blue) {
        double x = root(row(X, red, green, blue) / WHITE_X);
        double y = root(row(Y, red, green, blue) / WHITE_Y);
        double z = root(row(Z, red, green, blue) / WHITE_Z);
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    private static double row(double[] row, double red, double green, double blue) {
        return row[0] * red + row[1] * green + row[2] * blue;
    }

    private static double root(double share) {
        return share > EPSILON ? StrictMath.cbrt(share) : (KAPPA * share + 16) / 116;
    }
}
