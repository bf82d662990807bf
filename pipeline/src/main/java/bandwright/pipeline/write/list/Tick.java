package bandwright.pipeline.write.list;

import bandwright.pipeline.write.pdf.Canvas;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;

/** A box to tick by hand, where the hand is. */
public record Tick(Length side) implements Block {
    private static final Length STROKE = Length.mm(0.35);

    public static Tick small() {
        return new Tick(Length.mm(3.6));
    }

    @Override
    public Length height(Faces faces, Length width) {
        return side;
    }

    @Override
    public Length firstBaseline(Faces faces, Length width) {
        return side;
    }

    @Override
    public void draw(Pen pen, Length x, Length top, Length width) {
        frame(pen.canvas(), new Box(x, top.minus(side), side, side), STROKE);
    }

    /** The outline of a box, drawn inside it. */
    static void frame(Canvas canvas, Box box, Length stroke) {
        Length inner = box.height().minus(stroke.times(2));
        canvas.black(1)
                .fill(new Box(box.x(), box.y(), box.width(), stroke))
                .fill(new Box(box.x(), box.top().minus(stroke), box.width(), stroke))
                .fill(new Box(box.x(), box.y().plus(stroke), stroke, inner))
                .fill(new Box(box.right().minus(stroke), box.y().plus(stroke), stroke, inner));
    }
}
