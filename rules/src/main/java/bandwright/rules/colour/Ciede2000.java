package bandwright.rules.colour;

/**
 * How different two colours look, CIEDE2000 with all weights 1 (ISO/CIE 11664-6), with the terms it is made of. Under 1 few
 * people see a difference; 5 is plain to see; black and white are 100 apart. After Sharma, Wu and Dalal, "The CIEDE2000
 * Color-Difference Formula: Implementation Notes, Supplementary Test Data, and Mathematical Observations", Color Research
 * and Application 30(1), 2005, whose names the terms keep. Hues are in degrees.
 */
record Ciede2000(
        Hued first,
        Hued second,
        double g,
        double meanHue,
        double t,
        double sl,
        double sc,
        double sh,
        double rt,
        double difference) {
    private static final double POW_25_7 = 6_103_515_625.0;

    /** A colour with its a stretched, and what that makes of its chroma and hue. */
    record Hued(double l, double a, double c, double hue) {
        static Hued of(Lab lab, double g) {
            double a = (1 + g) * lab.a();
            double c = StrictMath.sqrt(a * a + lab.b() * lab.b());
            double hue = c == 0 ? 0 : StrictMath.toDegrees(StrictMath.atan2(lab.b(), a));
            return new Hued(lab.l(), a, c, hue < 0 ? hue + 360 : hue);
        }
    }

    static Ciede2000 between(Lab one, Lab other) {
        double g = 0.5 * (1 - chromaRatio((chroma(one) + chroma(other)) / 2));
        return between(Hued.of(one, g), Hued.of(other, g), g);
    }

    private static Ciede2000 between(Hued one, Hued other, double g) {
        double meanL = (one.l + other.l) / 2;
        double meanC = (one.c + other.c) / 2;
        double meanHue = meanHue(one, other);
        double t = 1
                - 0.17 * cos(meanHue - 30)
                + 0.24 * cos(2 * meanHue)
                + 0.32 * cos(3 * meanHue + 6)
                - 0.20 * cos(4 * meanHue - 63);
        double fromMiddle = (meanL - 50) * (meanL - 50);
        double sl = 1 + 0.015 * fromMiddle / StrictMath.sqrt(20 + fromMiddle);
        double sc = 1 + 0.045 * meanC;
        double sh = 1 + 0.015 * meanC * t;
        double turn = (meanHue - 275) / 25;
        double rt = -2 * chromaRatio(meanC) * sin(60 * StrictMath.exp(-turn * turn));
        double dl = (other.l - one.l) / sl;
        double dc = (other.c - one.c) / sc;
        double dh = 2 * StrictMath.sqrt(one.c * other.c) * sin(hueStep(one, other) / 2) / sh;
        double squared = dl * dl + dc * dc + dh * dh + rt * dc * dh;
        return new Ciede2000(one, other, g, meanHue, t, sl, sc, sh, rt, StrictMath.sqrt(Math.max(0, squared)));
    }

    private static double chroma(Lab lab) {
        return StrictMath.sqrt(lab.a() * lab.a() + lab.b() * lab.b());
    }

    /** sqrt(C^7 / (C^7 + 25^7)). */
    private static double chromaRatio(double c) {
        double squared = c * c;
        double seventh = squared * squared * squared * c;
        return StrictMath.sqrt(seventh / (seventh + POW_25_7));
    }

    /** From the first hue to the second, the short way round; exactly opposite ones as they are. */
    private static double hueStep(Hued one, Hued other) {
        if (one.c == 0 || other.c == 0) {
            return 0;
        }
        double step = other.hue - one.hue;
        if (step > 180) {
            return step - 360;
        }
        return step < -180 ? step + 360 : step;
    }

    private static double meanHue(Hued one, Hued other) {
        double sum = one.hue + other.hue;
        if (one.c == 0 || other.c == 0) {
            return sum; // a grey has no hue, the other's counts alone
        }
        if (Math.abs(one.hue - other.hue) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double cos(double degrees) {
        return StrictMath.cos(StrictMath.toRadians(degrees));
    }

    private static double sin(double degrees) {
        return StrictMath.sin(StrictMath.toRadians(degrees));
    }
}
