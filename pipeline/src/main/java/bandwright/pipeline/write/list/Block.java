package bandwright.pipeline.write.list;

import bandwright.rules.units.Length;
import java.util.List;

/** Something that stands on a list: it knows how high it is at a width, and draws itself from its upper-left corner. */
public interface Block {
    Length height(Faces faces, Length width);

    /** Draws on the pen's page; {@code top} is counted upwards from the page's lower edge, as PDF does. */
    void draw(Pen pen, Length x, Length top, Length width);

    /** How far its first line's baseline, or its picture's foot, lies below its top: the cells of a row share it. */
    default Length firstBaseline(Faces faces, Length width) {
        return Length.ZERO;
    }

    /** The parts that may stand on different pages where the whole is higher than a page; itself where it must not be parted. */
    default List<Block> parts(Faces faces, Length width) {
        return List.of(this);
    }
}
