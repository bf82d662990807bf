package bandwright.pipeline.tile;

import bandwright.rules.paper.Footprint;
import bandwright.rules.units.Box;
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
 * @param bent the shape of a cone's picture; empty where the picture is its box
 */
record Pose(
        Rotation rotation,
        long width,
        long height,
        Span flag,
        Span corner,
        Span foot,
        boolean flagged,
        Optional<BentShape> bent) {
    /** The poses that a room takes: with a flag where any of them fits, else without. */
    static List<Pose> of(FlatPattern pattern, PoseLaw law) {
        List<Pose> poses = fitting(pattern, law);
        return poses.isEmpty() && law.hasFlag() ? fitting(pattern, law.withoutFlag()) : poses;
    }

    private static List<Pose> fitting(FlatPattern pattern, PoseLaw law) {
        boolean isEveryTurnNew = law.hasFlag() || pattern.sector().isPresent();
        List<Rotation> turns = isEveryTurnNew ? List.of(Rotation.values()) : plainTurns(pattern.isSquare());
        List<Pose> poses = new ArrayList<>();
        turns.forEach(turn -> of(pattern, turn, law).ifPresent(poses::add));
        return List.copyOf(poses);
    }

    private static List<Rotation> plainTurns(boolean square) {
        return square ? List.of(Rotation.R0) : List.of(Rotation.R0, Rotation.R90);
    }

    private static Optional<Pose> of(FlatPattern pattern, Rotation turn, PoseLaw law) {
        Footprint footprint = law.footprint(pattern, turn);
        Optional<BentShape> bent = pattern.sector().map(sector -> BentShape.of(sector, turn, law.gap()));
        return law.corner(footprint)
                .map(corner -> of(turn, footprint.picture(), law.taken(footprint), corner, bent, law));
    }

    private static Pose of(Rotation turn, Box picture, Span flag, Span corner, Optional<BentShape> bent, PoseLaw law) {
        long width = picture.width().nanometres() + law.gap();
        long height = picture.height().nanometres() + law.gap();
        // A footprint that lies on the field keeps the corner within its bounds.
        Span foot = new Span(
                Math.min(flag.x0(), -corner.x0()),
                Math.min(flag.y0(), -corner.y0()),
                Math.max(Math.max(width, flag.x1()), law.fieldWidth() - corner.x1()),
                Math.max(Math.max(height, flag.y1()), law.fieldHeight() - corner.y1()));
        return new Pose(turn, width, height, flag, corner, foot, law.hasFlag(), bent);
    }
}
