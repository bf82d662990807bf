package bandwright.pipeline.write.setup;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;

/**
 * How many equal strips lie on one sheet, along it or turned. A strip of 210 x 50 mm on a sheet that takes 203 x 267 mm,
 * turned: three, one above the other.
 *
 * @param pitchX from one strip's left side to the next one's
 * @param pitchY from one strip's lower side to the next one's
 */
record TrialGrid(boolean isTurned, int columns, int rows, double pitchX, double pitchY, double width, double height) {
    /** Ticks stand here, left and right of a strip. */
    static final double SIDE = 8;

    /** The line that says which try it is, under the strip's trim gap. */
    static final double LABEL = 4;

    /** Print settings and the sheet's number, along the upper edge. */
    static final double HEAD = 12;

    static TrialGrid of(Box strip, double gap, Box inside) {
        TrialGrid upright = of(strip, gap, inside, false);
        TrialGrid turned = of(strip, gap, inside, true);
        return turned.count() > upright.count() ? turned : upright;
    }

    private static TrialGrid of(Box strip, double gap, Box inside, boolean isTurned) {
        Length across = isTurned ? inside.height() : inside.width();
        Length up = isTurned ? inside.width() : inside.height();
        double pitchX = strip.width().mm() + 2 * SIDE;
        double pitchY = strip.height().mm() + 2 * gap + LABEL;
        return new TrialGrid(
                isTurned,
                (int) Math.floor(across.mm() / pitchX),
                (int) Math.floor((up.mm() - HEAD) / pitchY),
                pitchX,
                pitchY,
                across.mm(),
                up.mm());
    }

    int count() {
        return columns * rows;
    }

    /** Where a strip's picture begins, the uppermost left one first. */
    double left(int place) {
        return place % columns * pitchX + SIDE;
    }

    double lower(int place, double gap) {
        return height - HEAD - (place / columns + 1) * pitchY + gap + LABEL;
    }
}
