package bandwright.pipeline.write.sheets;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Where to cut: short lines that lengthen the cut line beyond its corners, from where the trim gap ends. A tick that
 * would stand in a picture's gap, a flag or a margin is shortened or left out.
 */
final class CornerTicks {
    private static final List<Length> LENGTHS = List.of(Length.mm(4), Length.mm(2.5), Length.mm(1.5));
    private static final Length STROKE = Length.mm(0.15);

    private CornerTicks() {}

    static List<Box> of(Box picture, Length border, Length gap, Waste waste) {
        Box cut = picture.grown(border);
        // From the cut line's corner outwards, the picture's own gap ends here.
        Length start = gap.minus(border).atLeast(Length.mm(0.5));
        List<Box> ticks = new ArrayList<>();
        for (Length y : List.of(cut.y(), cut.top())) {
            firstFree(ticks, waste, length -> across(cut.x().minus(start).minus(length), y, length));
            firstFree(ticks, waste, length -> across(cut.right().plus(start), y, length));
        }
        for (Length x : List.of(cut.x(), cut.right())) {
            firstFree(ticks, waste, length -> up(x, cut.y().minus(start).minus(length), length));
            firstFree(ticks, waste, length -> up(x, cut.top().plus(start), length));
        }
        return ticks;
    }

    private interface Tick {
        Box of(Length length);
    }

    private static void firstFree(List<Box> ticks, Waste waste, Tick tick) {
        LENGTHS.stream().map(tick::of).filter(waste::isFree).findFirst().ifPresent(ticks::add);
    }

    private static Box across(Length x, Length y, Length length) {
        return new Box(x, y.minus(STROKE.half()), length, STROKE);
    }

    private static Box up(Length x, Length y, Length length) {
        return new Box(x.minus(STROKE.half()), y, STROKE, length);
    }
}
