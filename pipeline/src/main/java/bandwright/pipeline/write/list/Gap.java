package bandwright.pipeline.write.list;

import bandwright.rules.units.Length;

/** White space. */
public record Gap(Length high) implements Block {
    public static Gap mm(double high) {
        return new Gap(Length.mm(high));
    }

    @Override
    public Length height(Faces faces, Length width) {
        return high;
    }

    @Override
    public void draw(Pen pen, Length x, Length top, Length width) {
        // White paper needs no ink.
    }
}
