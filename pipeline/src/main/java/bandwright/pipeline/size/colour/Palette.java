package bandwright.pipeline.size.colour;

import bandwright.rules.colour.Lab;
import bandwright.rules.units.Rgb;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The colours of a print and how much of each there is. Colours that nobody could tell apart are one, their mean: a photograph
 * of 160,000 pixels is some 2,000 colours.
 *
 * @param inked all but white
 * @param bareMm2 how much of the pictures is white, which is no ink
 */
record Palette(List<Tint> inked, double bareMm2) {
    /** A colour as printed on white. */
    record Tint(Rgb colour, double mm2) {
        Lab onWhite() {
            return Lab.of(colour); // not kept: few are asked
        }
    }

    Palette {
        inked = List.copyOf(inked);
    }

    double mm2() {
        return bareMm2 + inked.stream().mapToDouble(Tint::mm2).sum();
    }

    /** Counts pixels by the five higher bits of each channel. */
    static final class Counting {
        private static final int BITS = 5;
        private static final int WHITE = 0xFF_FFFFFF;

        private final List<Tint> inked = new ArrayList<>();
        private double bareMm2;

        /** Of each colour how many pixels, and the sums of their reds, greens and blues: side by side, as they are needed. */
        private final int[] sums = new int[4 << (3 * BITS)];

        private int white;

        void add(Rgb colour, double mm2) {
            if (colour.equals(Rgb.WHITE)) {
                bareMm2 += Math.max(0, mm2);
            } else if (mm2 > 0) {
                inked.add(new Tint(colour, mm2));
            }
        }

        /** Of one picture, all of whose pixels are equally large. */
        void begin() {
            Arrays.fill(sums, 0);
            white = 0;
        }

        void pixel(int rgb) {
            if (rgb == WHITE) {
                white++;
                return;
            }
            int red = rgb >> 16 & 255;
            int green = rgb >> 8 & 255;
            int blue = rgb & 255;
            int like = ((red >> (8 - BITS)) << (2 * BITS)) | ((green >> (8 - BITS)) << BITS) | (blue >> (8 - BITS));
            int at = 4 * like;
            sums[at]++;
            sums[at + 1] += red;
            sums[at + 2] += green;
            sums[at + 3] += blue;
        }

        void end(double pixelMm2) {
            bareMm2 += white * pixelMm2;
            for (int at = 0; at < sums.length; at += 4) {
                int count = sums[at];
                if (count > 0) {
                    add(
                            new Rgb(mean(sums[at + 1], count), mean(sums[at + 2], count), mean(sums[at + 3], count)),
                            count * pixelMm2);
                }
            }
        }

        private static int mean(int sum, int count) {
            return (sum + count / 2) / count;
        }

        Palette palette() {
            return new Palette(inked, bareMm2);
        }
    }
}
