package bandwright.pipeline.tile;

import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Length;
import java.util.List;

/** Pictures of one shape: which one lies where is settled after the search, as they are interchangeable. */
record Kind(FlatPattern pattern, List<Pose> poses, int copies) {
    Kind {
        poses = List.copyOf(poses);
        if (poses.isEmpty()) {
            throw new IllegalArgumentException("a paper that does not take " + pattern);
        }
    }

    Length width() {
        return pattern.box().width();
    }

    Length height() {
        return pattern.box().height();
    }

    boolean isBent() {
        return pattern.sector().isPresent();
    }

    /**
     * Of the field, gap included, in square nanometres. Of a sector no more than what lies within half a gap of it: its
     * arcs half a gap farther apart each, and a strip of half a gap along both ends.
     */
    double area() {
        if (pattern.sector().isPresent()) {
            Sector sector = pattern.sector().get();
            double half = (poses.get(0).width() - width(0)) / 2.0;
            double inner = Math.max(0, sector.inner().nanometres() - half);
            double outer = sector.outer().nanometres() + half;
            double ends = 2.0 * half * sector.outer().minus(sector.inner()).nanometres();
            return sector.halfRadians() * (outer * outer - inner * inner) + ends;
        }
        return (double) poses.get(0).width() * poses.get(0).height();
    }

    /** Of the picture alone, in square nanometres. */
    double bareArea() {
        return pattern.sector()
                .map(sector -> sector.area() * 1e12)
                .orElse((double) width().nanometres() * height().nanometres());
    }

    /** Of the picture as the pose turns it. */
    private long width(int pose) {
        return (poses.get(pose).rotation().swapsSides() ? height() : width()).nanometres();
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
