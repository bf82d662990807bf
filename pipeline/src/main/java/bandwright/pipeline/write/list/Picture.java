package bandwright.pipeline.write.list;

import bandwright.pipeline.write.thumb.Thumbnail;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;

/**
 * A small picture, as large as a box allows, in a thin frame: what is white at its edge ends there and not at the paper.
 *
 * @param widest the box's width
 * @param highest the box's height
 */
public record Picture(Thumbnail thumbnail, Length widest, Length highest) implements Block {
    private static final Length FRAME = Length.mm(0.1);

    @Override
    public Length height(Faces faces, Length width) {
        return Length.mm(scale() * thumbnail.height());
    }

    @Override
    public void draw(Pen pen, Length x, Length top, Length width) {
        Length high = height(pen.faces(), width);
        Length wide = Length.mm(scale() * thumbnail.width());
        Box box = new Box(x, top.minus(high), wide, high);
        pen.canvas().save().stretchTo(box);
        pen.pictures().draw(pen.canvas(), thumbnail);
        pen.canvas().restore();
        Tick.frame(pen.canvas(), box, FRAME);
    }

    /** Millimetres that a pixel takes. */
    private double scale() {
        return Math.min(widest.mm() / thumbnail.width(), highest.mm() / thumbnail.height());
    }
}
