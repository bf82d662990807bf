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
    record Flat(Box box, Rgb colour, Edges edges, int packed) implements Part {
        Flat(Box box, Rgb colour) {
            this(box, colour, Edges.of(box), 0xFF00_0000 | colour.red() << 16 | colour.green() << 8 | colour.blue());
        }

        @Override
        public int over(double x, double y, int under) {
            return edges.enclose(x, y) ? packed : under;
        }
    }

    /**
     * A picture.
     *
     * @param shown what is printed of it
     * @param place where all of it would lie
     * @param edges those of what is printed
     * @param wide how wide a pixel of its view is on the blank
     * @param high how high
     */
    record Seen(Sight sight, Box shown, Edges place, Edges edges, double wide, double high) implements Part {
        static Seen of(Sight sight, Box place, Box shown) {
            return new Seen(
                    sight,
                    shown,
                    Edges.of(place),
                    Edges.of(shown),
                    place.width().mm() / sight.width(),
                    place.height().mm() / sight.height());
        }

        @Override
        public int over(double x, double y, int under) {
            if (!edges.enclose(x, y)) {
                return under;
            }
            int column = inside((int) ((x - place.left) / wide), sight.width());
            int row = inside((int) ((place.top - y) / high), sight.height());
            return Overprint.over(sight.at(column, row), under);
        }

        private static int inside(int number, int count) {
            return Math.max(0, Math.min(count - 1, number));
        }

        /** Counts the pixels whose middles are printed. */
        void count(int ground, Palette.Counting counting) {
            int left = first((edges.left - place.left) / wide, sight.width());
            int right = first((edges.right - place.left) / wide, sight.width());
            int top = first((place.top - edges.top) / high, sight.height());
            int bottom = first((place.top - edges.low) / high, sight.height());
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

    /** A box in mm. */
    record Edges(double left, double right, double low, double top) {
        static Edges of(Box box) {
            return new Edges(
                    box.x().mm(), box.right().mm(), box.y().mm(), box.top().mm());
        }

        boolean enclose(double x, double y) {
            return x >= left && x < right && y >= low && y < top;
        }
    }
}
