package bandwright.pipeline.size;

import bandwright.pipeline.pixels.Sight;
import bandwright.rules.units.Box;
import bandwright.rules.words.Words;
import java.util.Optional;

/**
 * A background that is nearly white, but not quite: white is no ink, while 250 of 255 prints as a pale veil with an edge.
 * A JPEG of a lamp on 250 all round, 62 % of what is printed, leaves a tint of 62 %.
 *
 * @param share of what is printed
 * @param level the middle one of its pixels' lightest channels, of 255
 */
record Tint(double share, int level) {
    /** From there on an eye takes it for white. [J] */
    private static final int NEARLY_WHITE = 240;

    /** What JPEG makes of pure white is off by one at most, and no printer sets a dot for that. [J] */
    private static final int WHITE = 254;

    /** Between the channels: more is a colour that somebody chose. [J] */
    private static final int MOST_COLOUR = 6;

    /** Of what is printed: less is no background. [J] */
    private static final double LEAST_SHARE = 0.2;

    /**
     * The tint of a picture, if it has one.
     *
     * @param place where the whole picture would lie
     * @param shown what of it is printed
     */
    static Optional<Tint> of(Sight sight, Box place, Box shown) {
        int left = pixel(shown.x().minus(place.x()).mm(), place.width().mm(), sight.width());
        int right = pixel(shown.right().minus(place.x()).mm(), place.width().mm(), sight.width());
        int top = pixel(place.top().minus(shown.top()).mm(), place.height().mm(), sight.height());
        int bottom = pixel(place.top().minus(shown.y()).mm(), place.height().mm(), sight.height());
        int[] levels = new int[256];
        int tinted = 0;
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                int level = level(sight.at(x, y));
                if (level > 0) {
                    levels[level]++;
                    tinted++;
                }
            }
        }
        double share = tinted / Math.max(1.0, (double) (right - left) * (bottom - top));
        return share < LEAST_SHARE ? Optional.empty() : Optional.of(new Tint(share, middle(levels, tinted)));
    }

    private static int pixel(double along, double side, int pixels) {
        return (int) Math.max(0, Math.min(pixels, Math.round(along / side * pixels)));
    }

    /** The lightest channel of a pixel that is nearly but not quite white; 0 of any other. */
    private static int level(int argb) {
        int green = argb >> 8 & 255;
        if (green < NEARLY_WHITE) {
            return 0; // most pixels: no more is asked of them
        }
        int red = argb >> 16 & 255;
        int blue = argb & 255;
        int least = Math.min(red, Math.min(green, blue));
        int most = Math.max(red, Math.max(green, blue));
        boolean isTint = argb >>> 24 == 255 && least >= NEARLY_WHITE && least < WHITE && most - least <= MOST_COLOUR;
        return isTint ? most : 0;
    }

    private static int middle(int[] levels, int count) {
        int level = NEARLY_WHITE;
        for (int below = levels[level]; below < (count + 1) / 2; below += levels[level]) {
            level++;
        }
        return level;
    }

    Note note() {
        return new Note("tint", Words.say("note.tint", Figures.percent(Math.round(share * 100) / 100.0), level));
    }
}
