package bandwright.pipeline.write.setup;

import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.list.Style;
import bandwright.rules.blanks.Form;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * What to do with a strip, a bar that tells whether it was printed true, and a narrow tape that goes through the handle
 * and reads the circumference, the paper's own thickness taken off.
 */
final class TapePages {
    /** Of plain paper, which the tape's scale takes off: wrapped outside it reads pi times more. [J] */
    static final Length PAPER = Length.mm(0.1);

    static final int BAR = 100;

    private static final double TAPE_HEIGHT = 18;
    private static final double AIR = 4;
    private static final double CAPTION = 4.5;

    /** Beyond what it should read, so that it can read more. */
    private static final double MORE = 30;

    private static final double LAP = 10;

    private final FitStrip strip;
    private final PaperRoom room;
    private final Faces faces;
    private final boolean isTurned;
    private final List<SetupSheet> sheets = new ArrayList<>();
    private SetupSheet sheet;
    private double y;

    TapePages(FitStrip strip, Faces faces) {
        this.strip = strip;
        this.room = strip.room();
        this.faces = faces;
        this.isTurned = room.inside().height().longerThan(room.inside().width());
        this.sheet = next();
    }

    List<SetupSheet> sheets() {
        write(strip.title(), Style.HEADING, 0);
        strip.facts().forEach(line -> write(line, Style.BODY, 1));
        write(Words.say("strip.print"), Style.BODY, 2);
        bar();
        strip.sum().forEach(line -> write(line, Style.STRONG, 0));
        strip.steps().forEach(line -> write(line, Style.BODY, 2));
        strip.circumference().ifPresent(this::tape);
        return List.copyOf(sheets);
    }

    private SetupSheet next() {
        sheet = SetupSheet.trueSize(faces, room, isTurned);
        sheets.add(sheet);
        y = sheet.height().mm();
        return sheet;
    }

    private void write(String text, Style style, double air) {
        double wide = sheet.width().mm();
        if (sheet.below(text, style, y - air, wide) < 0) {
            next();
        }
        y = sheet.setBelow(text, style, 0, y - air, wide);
    }

    /** From the outer edge of one end line to the outer edge of the other. */
    private void bar() {
        if (y < 22) {
            next();
        }
        y -= 14;
        sheet.bar(BAR, 0, y, false, Words.say("strip.bar", BAR, room.printer().id()));
        y -= 4;
    }

    private void tape(Length round) {
        double length = round.mm() + MORE;
        double from = 0;
        while (from < length) {
            if (y < TAPE_HEIGHT + AIR + CAPTION) {
                next();
            }
            y -= AIR + CAPTION;
            boolean isFirst = from == 0;
            String caption = isFirst ? Words.say("strip.start") : Words.say("strip.join", (int) Math.round(from + LAP));
            sheet.set(caption, Style.SMALL, 0, y + 1.5);
            double to = Math.min(length, from + sheet.width().mm() - 1);
            y -= TAPE_HEIGHT;
            piece(from, to, isFirst);
            from = to < length ? Math.floor(to / 10) * 10 - LAP : length;
        }
    }

    private void piece(double from, double to, boolean isFirst) {
        double top = y + TAPE_HEIGHT;
        sheet.across(0, to - from, y);
        sheet.across(0, to - from, top);
        sheet.up(0, y, top);
        sheet.up(to - from, y, top);
        millimetres(from, to, isFirst, top);
        if (strip.unit() == LengthUnit.IN) {
            inches(from, to, top - TAPE_HEIGHT);
        }
    }

    /** The scale gives what lies under the paper: pi times its thickness less than is wrapped outside. */
    private void millimetres(double from, double to, boolean isFirst, double top) {
        double taken = Math.PI * PAPER.mm();
        for (int mm = (int) Math.ceil(from); mm + taken <= to; mm++) {
            double at = isFirst && mm == 0 ? 0 : mm + taken - from;
            double tick = mm % 10 == 0 ? 5 : mm % 5 == 0 ? 3.5 : 2;
            sheet.up(at, top - tick, top);
            if (mm % 10 == 0 && at > 2 && mm + 4 < to) {
                String text = mm == 10 ? Words.say("strip.ten-mm") : String.valueOf(mm);
                sheet.setCentred(text, Style.SMALL, at, top - 7.6);
            }
        }
    }

    private void inches(double from, double to, double bottom) {
        double eighth = Length.inches(1).mm() / 8;
        double taken = Math.PI * PAPER.mm();
        for (int i = (int) Math.ceil(from / eighth); i * eighth + taken <= to; i++) {
            double at = i == 0 ? 0 : i * eighth + taken - from;
            sheet.up(at, bottom, bottom + (i % 8 == 0 ? 4 : i % 4 == 0 ? 3 : 1.8));
            if (i % 8 == 0 && at > 3 && at + 4 < to - from) {
                String text = i == 8 ? Words.say("strip.one-inch") : String.valueOf(i / 8);
                sheet.setCentred(text, Style.SMALL, at, bottom + 4.6);
            }
        }
    }

    /** What a tape round a blank has to read; a cone's goes round its rim. */
    static Length round(Form form) {
        return form instanceof Form.Cylinder cylinder
                ? cylinder.circumference()
                : ((Form.Cone) form).rimCircumference();
    }
}
