package bandwright.rules.heat;

import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Form;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import java.util.Comparator;

/**
 * How large what goes over a transfer has to be. A picture of 209.55 x 82.55 mm takes protective paper of 230 x 105 mm;
 * a shrink sleeve goes by the blank itself, 258 mm round and 95 mm high.
 *
 * @param across of paper its width, of a sleeve the way round the widest place of the blank
 * @param up how high
 * @param isFlat whether the blank of a sleeve is a flat one: then across is its width
 */
public record CoveringSize(Covering covering, Length across, Length up, boolean isFlat)
        implements Comparable<CoveringSize> {
    /** How far protective paper reaches over the picture on every side. Common practice, no source. [J] */
    public static final Length OVER = Length.mm(10);

    private static final Comparator<CoveringSize> SMALLEST_FIRST = Comparator.comparing(CoveringSize::covering)
            .thenComparing(CoveringSize::isFlat)
            .thenComparing(CoveringSize::across)
            .thenComparing(CoveringSize::up);

    /** Paper is cut in steps of a quarter inch or of 5 mm, so that pictures of nearly one size share one. [J] */
    private static Length step(LengthUnit unit) {
        return unit == LengthUnit.IN ? Length.inches(0.25) : Length.mm(5);
    }

    /**
     * Protective paper.
     *
     * @param picture what is printed, as it lies on the paper upright
     */
    public static CoveringSize paper(Box picture, LengthUnit unit) {
        Length more = OVER.times(2);
        return new CoveringSize(
                Covering.PROTECTIVE_PAPER,
                stepped(picture.width().plus(more), step(unit)),
                stepped(picture.height().plus(more), step(unit)),
                false);
    }

    private static Length stepped(Length length, Length step) {
        long steps = Math.floorDiv(length.nanometres() + step.nanometres() - 1, step.nanometres());
        return new Length(steps * step.nanometres());
    }

    /** A shrink sleeve, by the blank that it is drawn over. */
    public static CoveringSize sleeve(Blank blank) {
        if (blank.form() instanceof Form.Cylinder cylinder) {
            return new CoveringSize(Covering.SHRINK_SLEEVE, cylinder.circumference(), cylinder.height(), false);
        }
        if (blank.form() instanceof Form.Cone cone) {
            Length foot = cone.footDiameter().times(Math.PI);
            return new CoveringSize(
                    Covering.SHRINK_SLEEVE, cone.rimCircumference().atLeast(foot), cone.height(), false);
        }
        Form.Flat flat = (Form.Flat) blank.form();
        return new CoveringSize(Covering.SHRINK_SLEEVE, flat.width(), flat.height(), true);
    }

    @Override
    public int compareTo(CoveringSize other) {
        return SMALLEST_FIRST.compare(this, other);
    }
}
