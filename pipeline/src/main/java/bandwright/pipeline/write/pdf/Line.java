package bandwright.pipeline.write.pdf;

import bandwright.rules.units.Length;

/** One line of type, and the size that it is set in. Sizes are lengths: the font's em on the paper. */
public record Line(OutlineFont font, String text, Length size) {
    private static final String ELLIPSIS = "\u2026";

    public Length width() {
        return size.times(font.widthShare(text));
    }

    /** The height of its capitals and figures over the baseline. */
    public Length capHeight() {
        return size.times(font.capShare());
    }

    /** This line made smaller until it fits; where it would have to be smaller than {@code least}, its end is cut. */
    public Line fitted(Length room, Length least) {
        return fitted(room, least, 1);
    }

    /** As {@link #fitted}, but cut in the middle: the last figures of a number tell pieces apart. */
    public Line fittedKeepingEnds(Length room, Length least) {
        return fitted(room, least, 0.5);
    }

    private Line fitted(Length room, Length least, double headShare) {
        Length width = width();
        if (!width.longerThan(room)) {
            return this;
        }
        // A hair less than the quotient, so that rounding never lets the line stick out.
        Length smaller = size.times(room.atLeast(Length.ZERO).mm() / width.mm()).minus(new Length(1));
        if (!least.longerThan(smaller)) {
            return new Line(font, text, smaller);
        }
        Line line = new Line(font, text, least.atMost(size));
        int kept = text.codePointCount(0, text.length());
        while (kept > 0 && line.width().longerThan(room)) {
            kept--;
            line = new Line(font, shortened(kept, headShare), line.size());
        }
        return line.width().longerThan(room) ? new Line(font, "", line.size()) : line;
    }

    private String shortened(int kept, double headShare) {
        int all = text.codePointCount(0, text.length());
        int head = (int) Math.ceil(kept * headShare);
        String start = text.substring(0, text.offsetByCodePoints(0, head));
        return start + ELLIPSIS + text.substring(text.offsetByCodePoints(0, all - (kept - head)));
    }
}
