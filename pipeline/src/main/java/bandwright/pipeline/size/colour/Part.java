package bandwright.pipeline.size.colour;

import bandwright.pipeline.pixels.Sight;
import bandwright.rules.colour.Overprint;
import bandwright.rules.units.Box;
import bandwright.rules.units.Rgb;

/** A layer of a print as it is looked at: a flat colour, or a picture's view. Places are in mm, pixels 0xAARRGGBB. */
sealed interface Part {
    /** White, as printed. */
    int NO_INK = 0xFF_FFFFFF;

    /** What is printed at a place, this part being printed over what was. */
    int over(double x, double y, int under);

    /** A background. */
    record Flat(Box box, Rgb colour, int packed) implements Part {
        Flat(Box box, Rgb colour) {
            this(box, colour, Print.packed(colour));
        }

        @Override
        public int over(double x, double y, int under) {
            return isIn(box, x, y) ? packed : under;
        }
    }

    /**
     * A picture.
     *
     * @param place where all of it would lie
     * @param shown what is printed of it
     */
    record Seen(Sight sight, Box place, Box shown) implements Part {
        @Override
        public int over(double x, double y, int under) {
            if (!isIn(shown, x, y)) {
                return under;
            }
            int column = (int) ((x - place.x().mm()) / pixelWidth());
            int row = (int) ((place.top().mm() - y) / pixelHeight());
            int pixel = sight.at(inside(column, sight.width()), inside(row, sight.height()));
            return Overprint.over(pixel, under);
        }

        private static int inside(int number, int count) {
            return Math.max(0, Math.min(count - 1, number));
        }

        private double pixelWidth() {
            return place.width().mm() / sight.width();
        }

        private double pixelHeight() {
            return place.height().mm() / sight.height();
        }

        /** Counts the pixels whose middles are printed. */
        void count(int ground, Palette.Counting counting) {
            double wide = pixelWidth();
            double high = pixelHeight();
            int left = first((shown.x().mm() - place.x().mm()) / wide, sight.width());
            int right = first((shown.right().mm() - place.x().mm()) / wide, sight.width());
            int top = first((place.top().mm() - shown.top().mm()) / high, sight.height());
            int bottom = first((place.top().mm() - shown.y().mm()) / high, sight.height());
            counting.begin();
            for (int y = top; y < bottom; y++) {
                for (int x = left; x < right; x++) {
                    counting.pixel(Overprint.over(sight.at(x, y), ground));
                }
            }
            counting.end(wide * high);
        }

        /** The first pixel whose middle lies beyond an edge, which is given in pixels. */
        private static int first(double edge, int most) {
            return (int) Math.max(0, Math.min(most, Math.ceil(edge - 0.5)));
        }
    }

    private static boolean isIn(Box box, double x, double y) {
        return x >= box.x().mm()
                && x < box.right().mm()
                && y >= box.y().mm()
                && y < box.top().mm();
    }
}
