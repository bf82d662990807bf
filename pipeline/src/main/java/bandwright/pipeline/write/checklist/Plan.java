package bandwright.pipeline.write.checklist;

import bandwright.pipeline.type.Outline;
import bandwright.pipeline.write.PlanShapes;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.list.Pen;
import bandwright.pipeline.write.pdf.Canvas;
import bandwright.rules.blanks.PlacePlan;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.List;

/**
 * A small drawn plan of where a picture stands: the cup from above with its handle, and beside it the wall unrolled from
 * handle to handle; the band is grey, its pictures are black. It needs no colour.
 */
record Plan(PlacePlan plan, boolean isRound, Length high) implements Block {
    private static final double RING = 0.34;
    private static final Length THIN = Length.mm(0.2);
    private static final Length BAND = Length.mm(0.7);
    private static final Length PICTURE = Length.mm(0.9);

    /** How wide it is drawn: the ring, and the unrolled wall three times as wide. */
    static Length width(Length high) {
        return high.times(4.4);
    }

    @Override
    public Length height(Faces faces, Length width) {
        return high;
    }

    @Override
    public void draw(Pen pen, Length x, Length top, Length width) {
        Canvas canvas = pen.canvas();
        if (isRound) {
            ring(canvas, x.mm() + high.mm() / 2, top.mm() - high.mm() * 0.6);
        }
        unrolled(canvas, x.plus(high.times(1.2)), top.minus(high.times(0.8)), high.times(3), high.times(0.5));
        canvas.black(1);
    }

    private void ring(Canvas canvas, double x, double y) {
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(high.mm() * RING, high.mm() * RING);
        stroke(canvas, PlanShapes.wall(), place, THIN, 1);
        if (plan.hasHandle()) {
            stroke(canvas, PlanShapes.handle(), place, THIN, 1);
        }
        stroke(canvas, PlanShapes.arc(plan.band(), 1.12), place, BAND, 0.3);
        plan.pictures().forEach(picture -> stroke(canvas, PlanShapes.arc(picture, 1.12), place, PICTURE, 1));
    }

    private static void stroke(Canvas canvas, Shape shape, AffineTransform place, Length width, double darkness) {
        canvas.line(darkness).stroke(Outline.of(shape, place), width);
    }

    private void unrolled(Canvas canvas, Length x, Length y, Length wide, Length tall) {
        fill(canvas, plan.band(), x, y, wide, tall, 0.18);
        plan.pictures().forEach(picture -> fill(canvas, picture, x, y, wide, tall, 0.75));
        Box all = new Box(x, y, wide, tall);
        canvas.black(1);
        List.of(
                        new Box(x, y, wide, THIN),
                        new Box(x, all.top().minus(THIN), wide, THIN),
                        new Box(x, y, THIN, tall),
                        new Box(all.right().minus(THIN), y, THIN, tall))
                .forEach(canvas::fill);
        if (plan.hasHandle()) {
            Length half = wide.times(0.035);
            canvas.fill(new Box(x, y.plus(tall.times(0.25)), half, tall.half()));
            canvas.fill(new Box(all.right().minus(half), y.plus(tall.times(0.25)), half, tall.half()));
        }
    }

    private static void fill(
            Canvas canvas, PlacePlan.Stretch part, Length x, Length y, Length wide, Length tall, double darkness) {
        canvas.black(darkness)
                .fill(new Box(x.plus(wide.times(part.from())), y, wide.times(part.to() - part.from()), tall));
    }
}
