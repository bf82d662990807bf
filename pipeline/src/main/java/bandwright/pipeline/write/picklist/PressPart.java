package bandwright.pipeline.write.picklist;

import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.list.Tick;
import bandwright.rules.blanks.TapeWay;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.CoveringSize;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.TapeText;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;

/** The pick list's part on coverings and heat tape. */
final class PressPart {
    private static final Length COUNT = Length.mm(20);
    private static final Length TICK = Length.mm(8);
    private static final Length BETWEEN = Length.mm(4);

    private PressPart() {}

    static void add(Pages pages, List<Unit> units, LengthUnit unit) {
        ForThePress needed = ForThePress.of(units, unit);
        Length what = pages.measure().minus(TICK).minus(COUNT).minus(BETWEEN);
        List<Length> columns = List.of(TICK, COUNT, BETWEEN, what);
        List<Block> lines = new ArrayList<>();
        needed.coverings().forEach((size, count) -> lines.add(line(columns, count.toString(), said(size, unit))));
        boolean inFeet = unit == LengthUnit.IN;
        lines.add(line(
                columns,
                Words.say(inFeet ? "picklist.feet" : "picklist.metres", needed.tapeToTake(unit)),
                Words.say("picklist.tape")));
        pages.together(Text.of(Words.say("picklist.press"), Style.HEADING), Gap.mm(2), lines.get(0));
        lines.subList(1, lines.size()).forEach(pages::add);
        String over = Words.say("picklist.press-how", measured(CoveringSize.OVER, unit), measured(TapeWay.OVER, unit));
        pages.add(Gap.mm(1)).add(Text.of(over, Style.SMALL)).add(Gap.mm(6));
    }

    private static Block line(List<Length> columns, String count, String what) {
        return Row.of(
                columns, List.of(Tick.small(), Text.right(count, Style.STRONG), Gap.mm(0), Text.of(what, Style.BODY)));
    }

    private static String said(CoveringSize size, LengthUnit unit) {
        String across = measured(size.across(), unit);
        String up = measured(size.up(), unit);
        if (size.covering() == Covering.PROTECTIVE_PAPER) {
            return Words.say("picklist.protective-paper", across, up);
        }
        return Words.say(size.isFlat() ? "picklist.sleeve-flat" : "picklist.sleeve", across, up);
    }

    /** To a sixteenth of an inch or a whole millimetre, as nobody cuts finer. */
    private static String measured(Length length, LengthUnit unit) {
        Length step = unit == LengthUnit.IN ? Length.inches(1 / 16.0) : Length.mm(1);
        Length near = new Length(Math.round(length.nanometres() / (double) step.nanometres()) * step.nanometres());
        return Words.say("picklist.length", TapeText.of(near, unit), unit.word());
    }
}
