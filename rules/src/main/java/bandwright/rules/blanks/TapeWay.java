package bandwright.rules.blanks;

import bandwright.rules.units.Length;

/**
 * Where a transfer is taped, as the press checklist says, and how much heat tape that takes: a mug's two ends beside the
 * handle, a tumbler's along its seam, two corners of a coaster. A picture 80 mm high takes 2 x 100 mm on a mug.
 */
public enum TapeWay {
    FLAT,
    HANDLE,
    ROUND;

    /** How far a strip reaches over the picture at both of its ends, to hold on the blank. Common practice, no source. [J] */
    public static final Length OVER = Length.mm(10);
    /** A strip over a corner. Common practice, no source. [J] */
    private static final Length CORNER = Length.mm(40);

    public static TapeWay of(Blank blank) {
        if (blank.form().isFlat()) {
            return FLAT;
        }
        return blank.hasHandle() ? HANDLE : ROUND;
    }

    /** The strips of one piece, one behind the other; pictureHeight is measured up the wall. */
    public Length tape(Length pictureHeight) {
        Length strip = pictureHeight.plus(OVER.times(2));
        return switch (this) {
            case FLAT -> CORNER.times(2);
            case HANDLE -> strip.times(2);
            case ROUND -> strip;
        };
    }
}
