package bandwright.pipeline.write.list;

import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;

/** The office paper that lists are laid out for: Letter where the shop thinks in inches, A4 elsewhere (ISO 216). */
public record ListPaper(Length width, Length height) {
    private static final Length SIDE = Length.mm(16);
    private static final Length TOP = Length.mm(14);
    private static final Length FOOT = Length.mm(16);

    public static ListPaper of(LengthUnit unit) {
        return unit == LengthUnit.IN
                ? new ListPaper(Length.inches(8.5), Length.inches(11))
                : new ListPaper(Length.mm(210.0), Length.mm(297.0));
    }

    Length left() {
        return SIDE;
    }

    Length measure() {
        return width.minus(SIDE.times(2));
    }

    Length top() {
        return height.minus(TOP);
    }

    Length foot() {
        return FOOT;
    }
}
