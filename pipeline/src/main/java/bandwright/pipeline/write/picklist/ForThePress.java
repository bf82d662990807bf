package bandwright.pipeline.write.picklist;

import bandwright.pipeline.size.Unit;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.TapeWay;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.CoveringSize;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the press uses up beside blanks and paper: one covering a piece, by size, and heat tape.
 *
 * @param tape all strips one behind the other
 */
record ForThePress(SortedMap<CoveringSize, Integer> coverings, Length tape) {
    private static final Length FOOT = Length.inches(12);
    private static final Length METRE = Length.mm(1000);

    ForThePress {
        coverings = Collections.unmodifiableSortedMap(new TreeMap<>(coverings));
    }

    static ForThePress of(List<Unit> units, LengthUnit unit) {
        SortedMap<CoveringSize, Integer> coverings = new TreeMap<>();
        Length tape = Length.ZERO;
        for (Unit each : units) {
            Blank blank = each.matched().blank();
            tape = tape.plus(TapeWay.of(blank).tape(each.transfer().height()));
            Covering covering = each.matched().source().covering();
            if (covering == Covering.PROTECTIVE_PAPER) {
                coverings.merge(CoveringSize.paper(each.transfer().box(), unit), 1, Integer::sum);
            } else if (covering == Covering.SHRINK_SLEEVE) {
                coverings.merge(CoveringSize.sleeve(blank), 1, Integer::sum);
            }
        }
        return new ForThePress(coverings, tape);
    }

    /** Whole feet or metres to take, none short. */
    long tapeToTake(LengthUnit unit) {
        long whole = (unit == LengthUnit.IN ? FOOT : METRE).nanometres();
        return Math.floorDiv(tape.nanometres() + whole - 1, whole);
    }
}
