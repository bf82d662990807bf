package bandwright.pipeline.tile;

import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One way to lay a picture on a paper: which way it is turned, and so on which side its flag hangs. All figures are
 * nanometres counted from the picture's lower-left corner, or, where they are bounds of that corner, from the
 * lower-left corner of the room's inside.
 *
 * <p>Gaps vanish from the search: a picture of 95 mm takes 99 mm where the gap is 4 mm, on an inside that is 4 mm
 * larger. The flag's taken paper is moved and grown so that "no two takings overlap" means exactly: the flag keeps
 * trim_border from every other picture, and off every other flag.
 *
 * @param width of the picture on the paper plus the gap
 * @param height of the picture on the paper plus the gap
 * @param flag what the flag takes; an empty span where there is none
 * @param corner where the picture's lower-left corner may lie
 * @param foot the rectangle of picture, border and flag as one piece; it may lie anywhere on the field
 */
record Pose(Rotation rotation, long width, long height, Span flag, Span corner, Span foot, boolean flagged) {
    /** The poses that a room takes: with a flag where any of them fits, else without. */
    static List<Pose> of(Length width, Length height, PoseLaw law) {
        List<Pose> poses = fitting(width, height, law);
        return poses.isEmpty() && law.hasFlag() ? fitting(width, height, law.withoutFlag()) : poses;
    }

    private static List<Pose> fitting(Length width, Length height, PoseLaw law) {
        List<Rotation> turns = law.hasFlag() ? List.of(Rotation.values()) : plainTurns(width.equals(height));
        List<Pose> poses = new ArrayList<>();
        for (Rotation turn : turns) {
            Length across = turn.swapsSides() ? height : width;
            Length along = turn.swapsSides() ? width : height;
            of(turn, across.nanometres(), along.nanometres(), law).ifPresent(poses::add);
        }
        return List.copyOf(poses);
    }

    private static List<Rotation> plainTurns(boolean square) {
        return square ? List.of(Rotation.R0) : List.of(Rotation.R0, Rotation.R90);
    }

    private static Optional<Pose> of(Rotation turn, long across, long along, PoseLaw law) {
        Span corner = law.corner(turn, across, along);
        if (corner.x1() < corner.x0() || corner.y1() < corner.y0()) {
            return Optional.empty();
        }
        Span flag = law.taken(turn, across, along);
        long width = across + law.gap();
        long height = along + law.gap();
        // A footprint that lies on the field keeps the corner within its bounds.
        Span foot = new Span(
                Math.min(flag.x0(), -corner.x0()),
                Math.min(flag.y0(), -corner.y0()),
                Math.max(Math.max(width, flag.x1()), law.fieldWidth() - corner.x1()),
                Math.max(Math.max(height, flag.y1()), law.fieldHeight() - corner.y1()));
        return Optional.of(new Pose(turn, width, height, flag, corner, foot, law.hasFlag()));
    }
}
