package bandwright.rules.colour;

import bandwright.rules.units.Rgb;

/**
 * What a printed colour looks like on a base, as an estimate. Dye is translucent and has no white: what it lets through, the
 * base throws back, so printed and base are multiplied in linear light, channel by channel. No ink shows exactly the base, a
 * white base exactly the printed colour, and nothing is ever lighter than the base: yellow (255, 255, 0) on a pink base of
 * (245, 182, 200) is (245, 182, 0).
 *
 * <p>It is the law of Beer and Lambert for ink that doesn't scatter, R = Ri Rb / Rw (see Kubelka, J. Opt. Soc. Am. 38:448,
 * 1948, for ink that does), taken over three bands of light instead of the whole spectrum. That is an approximation, and no
 * sentence may claim more of it.
 */
public final class Overprint {
    private final Rgb base;
    private final int[] red;
    private final int[] green;
    private final int[] blue;

    private Overprint(Rgb base) {
        this.base = base;
        this.red = channels(base.red());
        this.green = channels(base.green());
        this.blue = channels(base.blue());
    }

    public static Overprint on(Rgb base) {
        return new Overprint(base);
    }

    private static int[] channels(int base) {
        int[] channels = new int[256];
        for (int printed = 0; printed < 256; printed++) {
            channels[printed] = LinearLight.channel(light(LinearLight.of(printed), LinearLight.of(base)));
        }
        return channels;
    }

    /** The colour as it will look. */
    public Rgb of(Rgb printed) {
        return new Rgb(red[printed.red()], green[printed.green()], blue[printed.blue()]);
    }

    /** The same of a pixel of 0xAARRGGBB, whose transparent part is no ink; the result is opaque. */
    public int of(int argb) {
        return forecast(onWhite(argb));
    }

    /** A whole picture of such pixels as it will look, in their order. The picture stays as it is. */
    public int[] of(int[] argb) {
        int[] forecast = new int[argb.length];
        for (int i = 0; i < argb.length; i++) {
            forecast[i] = forecast(onWhite(argb[i]));
        }
        return forecast;
    }

    private int forecast(int printed) {
        return 0xFF00_0000 | (red[printed >> 16 & 255] << 16) | (green[printed >> 8 & 255] << 8) | blue[printed & 255];
    }

    /** As it will look, in Lab, before it is rounded to what a screen can show. */
    public Lab lab(Rgb printed) {
        return Lab.ofLight(
                light(LinearLight.of(printed.red()), LinearLight.of(base.red())),
                light(LinearLight.of(printed.green()), LinearLight.of(base.green())),
                light(LinearLight.of(printed.blue()), LinearLight.of(base.blue())));
    }

    /** What a printed channel leaves of the light of a base; both as shares of white's. */
    static double light(double printed, double base) {
        return printed * base;
    }

    /** What a pixel of 0xAARRGGBB prints as, on white; opaque. */
    public static int onWhite(int argb) {
        return over(argb, 0xFF_FFFFFF);
    }

    /**
     * What a pixel of 0xAARRGGBB and an opaque one under it print as together. Mixed in sRGB's own values, as PDF mixes what
     * is transparent in the colour space that it blends in (ISO 32000-1, 11.3).
     */
    public static int over(int argb, int under) {
        int alpha = argb >>> 24;
        if (alpha == 255) {
            return argb;
        }
        return 0xFF00_0000
                | (mixed(argb >> 16 & 255, under >> 16 & 255, alpha) << 16)
                | (mixed(argb >> 8 & 255, under >> 8 & 255, alpha) << 8)
                | mixed(argb & 255, under & 255, alpha);
    }

    private static int mixed(int over, int under, int alpha) {
        return (over * alpha + under * (255 - alpha) + 127) / 255;
    }
}
