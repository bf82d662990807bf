package bandwright.pipeline.tile;

import bandwright.rules.units.Length;
import java.util.List;

/** Pictures of one size: which one lies where is settled after the search, as they are interchangeable. */
record Kind(Length width, Length height, List<Pose> poses, int copies) {
    Kind {
        poses = List.copyOf(poses);
        if (poses.isEmpty()) {
            throw new IllegalArgumentException("a paper that does not take " + width + " x " + height);
        }
    }

    /** Of the field, gap included, in square nanometres. */
    double area() {
        return (double) poses.get(0).width() * poses.get(0).height();
    }

    /** Of picture, border and flag as one rectangle. */
    double footArea() {
        Span foot = poses.get(0).foot();
        return (double) foot.width() * foot.height();
    }

    long longSide() {
        return Math.max(poses.get(0).width(), poses.get(0).height());
    }

    long shortSide() {
        return Math.min(poses.get(0).width(), poses.get(0).height());
    }
}
