package bandwright.pipeline.write.checklist;

import bandwright.pipeline.write.day.DayBars;
import bandwright.pipeline.write.day.DayBars.Bar;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.list.Pen;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;

/**
 * The day drawn as bars over a line of time: what warms up is light, what is hot a thin line, loads are dark with their
 * numbers, hands black. It needs no colour.
 */
record Timeline(DayBars bars) implements Block {
    private static final Length NAMES = Length.mm(34);
    private static final Length ROW = Length.mm(6.4);
    private static final Length BAR = Length.mm(4.4);
    private static final Length HANDS = Length.mm(3);
    private static final Length HOT = Length.mm(0.5);
    private static final Length HEAD = Length.mm(5);
    private static final Length HAIR = Length.mm(0.15);
    private static final Length GAP = Length.mm(0.25);
    /** An hour's time needs so much room beside it. */
    private static final Length HOUR_WIDE = Length.mm(13);

    private static final Length DIGIT = Length.mm(1.7);
    private static final Style IN_BAR = new Style(true, Style.SMALL.size(), 0);

    @Override
    public Length height(Faces faces, Length width) {
        return HEAD.plus(ROW.times(bars.rows().size())).plus(Length.mm(1));
    }

    @Override
    public void draw(Pen pen, Length x, Length top, Length width) {
        Length foot = top.minus(height(pen.faces(), width));
        Length right = x.plus(width);
        for (Bar pause : bars.breaks()) {
            Length from = at(pause.from(), x, width);
            Length wide = at(pause.to(), x, width).minus(from);
            pen.canvas()
                    .black(0.1)
                    .fill(new Box(from, foot, wide, top.minus(HEAD).minus(foot)));
        }
        hours(pen, x, top, width, foot, right);
        Length y = top.minus(HEAD);
        for (DayBars.Row row : bars.rows()) {
            Text.of(row.name(), Style.SMALL).onOneLine(pen.faces(), NAMES).draw(pen, x, y.minus(Length.mm(1.2)), NAMES);
            for (Bar bar : row.bars()) {
                bar(pen, bar, x, width, y);
            }
            y = y.minus(ROW);
            pen.canvas().black(0.3).fill(new Box(x, y, width, HAIR));
        }
        pen.canvas().black(1);
    }

    private void hours(Pen pen, Length x, Length top, Length width, Length foot, Length right) {
        Length free = x;
        for (DayBars.Hour hour : bars.hours()) {
            Length at = at(hour.at(), x, width);
            pen.canvas().black(0.3).fill(new Box(at, foot, HAIR, top.minus(HEAD).minus(foot)));
            if (!free.longerThan(at) && !at.plus(HOUR_WIDE).longerThan(right.plus(HOUR_WIDE.half()))) {
                Text.of(hour.words(), Style.SMALL).draw(pen, at, top, HOUR_WIDE);
                free = at.plus(HOUR_WIDE);
            }
        }
    }

    private void bar(Pen pen, Bar bar, Length x, Length width, Length y) {
        switch (bar.kind()) {
            case WARM_UP -> pen.canvas().black(0.22).fill(box(bar, x, width, y, BAR));
            case HOT -> pen.canvas().black(0.7).fill(box(bar, x, width, y, HOT));
            case LOAD -> load(pen, bar, box(bar, x, width, y, BAR));
            case HANDS -> pen.canvas().black(1).fill(box(bar, x, width, y, HANDS));
            case BREAK -> pen.canvas().black(0.1).fill(box(bar, x, width, y, ROW));
        }
    }

    /** A little apart from the next one, so that two loads are seen as two. */
    private static void load(Pen pen, Bar bar, Box box) {
        Length wide = box.width().longerThan(GAP.times(2)) ? box.width().minus(GAP) : box.width();
        pen.canvas().black(0.75).fill(new Box(box.x(), box.y(), wide, box.height()));
        Length needed = DIGIT.times(bar.words().length() + 0.6);
        if (wide.longerThan(needed)) {
            Text.of(bar.words(), IN_BAR)
                    .draw(pen, box.x().plus(Length.mm(0.5)), box.top().minus(Length.mm(0.6)), wide);
        }
    }

    /** In the middle of a row whose top is at {@code y}. */
    private Box box(Bar bar, Length x, Length width, Length y, Length high) {
        Length from = at(bar.from(), x, width);
        Length bottom = y.minus(ROW.plus(high).half());
        return new Box(from, bottom, at(bar.to(), x, width).minus(from), high);
    }

    private Length at(long seconds, Length x, Length width) {
        double share = (double) (seconds - bars.from()) / (bars.to() - bars.from());
        return x.plus(NAMES).plus(width.minus(NAMES).times(Math.max(0, Math.min(1, share))));
    }
}
