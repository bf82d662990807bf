package bandwright.pipeline.write.list;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.List;

/** A block with a frame about it: what must be seen before the rest. */
public record Framed(Block inner, Length padding, Length stroke) implements Block {
    public static Framed of(Block inner) {
        return new Framed(inner, Length.mm(2.5), Length.mm(0.6));
    }

    @Override
    public Length height(Faces faces, Length width) {
        return inner.height(faces, inside(width)).plus(padding.plus(stroke).times(2));
    }

    @Override
    public void draw(Pen pen, Length x, Length top, Length width) {
        Length high = height(pen.faces(), width);
        Tick.frame(pen.canvas(), new Box(x, top.minus(high), width, high), stroke);
        Length edge = padding.plus(stroke);
        inner.draw(pen, x.plus(edge), top.minus(edge), inside(width));
    }

    /** Frames one under the other, each with a stretch of what is inside. */
    @Override
    public List<Block> parts(Faces faces, Length width) {
        return Bites.of(inner, faces, inside(width)).stream()
                .<Block>map(bite -> new Framed(bite, padding, stroke))
                .toList();
    }

    private Length inside(Length width) {
        return width.minus(padding.plus(stroke).times(2));
    }
}
