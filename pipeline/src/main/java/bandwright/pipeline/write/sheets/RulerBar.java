package bandwright.pipeline.write.sheets;

import bandwright.pipeline.write.pdf.Canvas;
import bandwright.pipeline.write.pdf.Lettering;
import bandwright.pipeline.write.pdf.Line;
import bandwright.pipeline.write.pdf.OutlineFont;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;

/** A bar to be measured: 100 mm from the outer edge of one end tick to that of the other, a tick every 10 mm. */
final class RulerBar {
    static final Length LENGTH = Length.mm(100);
    static final Length DEPTH = Length.mm(6.5);

    private static final Length STROKE = Length.mm(0.2);
    private static final Length END_TICK = Length.mm(3.5);
    private static final Length SMALL_TICK = Length.mm(1.4);
    private static final Length TYPE = Length.mm(2.3);
    private static final int STEPS = 10;

    private RulerBar() {}

    static void draw(Canvas canvas, Lettering lettering, Box box, boolean turned) {
        canvas.save();
        if (turned) {
            canvas.concat(0, 1, -1, 0, box.right(), box.y());
        } else {
            canvas.concat(1, 0, 0, 1, box.x(), box.y());
        }
        canvas.fill(Box.of(LENGTH, STROKE));
        for (int i = 0; i <= STEPS; i++) {
            Length x = LENGTH.minus(STROKE).times((double) i / STEPS);
            canvas.fill(new Box(x, Length.ZERO, STROKE, i % STEPS == 0 ? END_TICK : SMALL_TICK));
        }
        Line line =
                new Line(OutlineFont.regular(), Words.say("sheets.bar"), TYPE).fitted(LENGTH.times(0.9), TYPE.half());
        lettering.set(canvas, line, LENGTH.minus(line.width()).half(), Length.mm(2.6));
        canvas.restore();
    }
}
