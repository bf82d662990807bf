package bandwright.pipeline.tile;

import bandwright.rules.units.Box;

/** A rectangle in nanometres while sheets are being searched: lower-left corner, upper-right corner. */
record Span(long x0, long y0, long x1, long y1) {
    static final Span NONE = new Span(0, 0, 0, 0);

    static Span of(Box box) {
        return new Span(
                box.x().nanometres(),
                box.y().nanometres(),
                box.right().nanometres(),
                box.top().nanometres());
    }

    long width() {
        return x1 - x0;
    }

    long height() {
        return y1 - y0;
    }
}
