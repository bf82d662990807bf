package bandwright.pipeline.tile;

import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * A cone's picture as it lies turned on a paper: a polygon that holds its sector and stands out by less than 0.1 mm, for
 * other cones' pictures, and upright spans that hold it, for everything else.
 */
final class BentShape {
    /** How many spans stand for a sector: so many that a name tag finds the hollow under the arc. [J] */
    private static final int COLUMNS = 12;

    /** How far the polygon stands out of the sector at most, in millimetres. */
    private static final double STANDS_OUT = 0.08;

    /** Edges that touch along their length can't be told from shapes that lie on each other; in millimetres. */
    private static final double LEAST_GAP = 0.001;

    private final double[] xs;
    private final double[] ys;
    private final List<Span> spans;
    private final double width;
    private final double height;

    private BentShape(double[] xs, double[] ys, List<Span> spans, double width, double height) {
        this.xs = xs;
        this.ys = ys;
        this.spans = List.copyOf(spans);
        this.width = width;
        this.height = height;
    }

    /**
     * @param gap that spans take to the right and above, in nanometres
     */
    static BentShape of(Sector sector, Rotation turn, long gap) {
        Box box = sector.box();
        List<Span> spans = new ArrayList<>();
        for (Box column : sector.cover(COLUMNS)) {
            Span span = Span.of(turn.turned(column, box));
            spans.add(new Span(span.x0(), span.y0(), span.x1() + gap, span.y1() + gap));
        }
        double[][] upright = polygon(sector);
        double[] xs = new double[upright[0].length];
        double[] ys = new double[upright[0].length];
        for (int i = 0; i < xs.length; i++) {
            double x = upright[0][i];
            double y = upright[1][i];
            double w = box.width().mm();
            double h = box.height().mm();
            switch (turn) {
                case R0 -> set(xs, ys, i, x, y);
                case R90 -> set(xs, ys, i, h - y, x);
                case R180 -> set(xs, ys, i, w - x, h - y);
                case R270 -> set(xs, ys, i, y, w - x);
            }
        }
        Box turned = turn.turned(box, box);
        return new BentShape(xs, ys, spans, turned.width().mm(), turned.height().mm());
    }

    private static void set(double[] xs, double[] ys, int i, double x, double y) {
        xs[i] = x;
        ys[i] = y;
    }

    /** The outer arc by its tangents, the inner one by its chords: both hold what lies between the arcs. */
    private static double[][] polygon(Sector sector) {
        double most = 2 * Math.sqrt(2 * STANDS_OUT / sector.outer().mm());
        int parts = (int) Math.ceil(2 * sector.halfRadians() / most);
        double step = 2 * sector.halfRadians() / parts;
        double outer = sector.outer().mm() / StrictMath.cos(step / 2);
        double[][] points = new double[2][2 * (parts + 1)];
        for (int i = 0; i <= parts; i++) {
            double angle = step * i - sector.halfRadians();
            point(sector, points, i, outer, angle);
            point(sector, points, 2 * parts + 1 - i, sector.inner().mm(), angle);
        }
        return points;
    }

    private static void point(Sector sector, double[][] points, int i, double radius, double angle) {
        double up = sector.rimIsOuter() ? 1 : -1;
        points[0][i] = sector.apexX() + radius * StrictMath.sin(angle);
        points[1][i] = sector.apexY() + up * radius * StrictMath.cos(angle);
    }

    /** What it takes of the field, the gap to the right and above included. */
    List<Span> spans() {
        return spans;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /**
     * Whether the two keep a gap.
     *
     * @param dx from this one's lower-left corner to the other's, in millimetres
     * @param wanted the gap in millimetres
     */
    boolean isClearOf(BentShape other, double dx, double dy, double wanted) {
        double gap = Math.max(wanted, LEAST_GAP);
        boolean boxesApart =
                dx >= width + gap || dy >= height + gap || -dx >= other.width + gap || -dy >= other.height + gap;
        if (boxesApart) {
            return true;
        }
        if (holds(other.xs[0] + dx, other.ys[0] + dy) || other.holds(xs[0] - dx, ys[0] - dy)) {
            return false;
        }
        double square = gap * gap;
        for (int i = 0; i < xs.length; i++) {
            int next = i + 1 == xs.length ? 0 : i + 1;
            if (!other.isClearOf(xs[i] - dx, ys[i] - dy, xs[next] - dx, ys[next] - dy, gap, square)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a straight line keeps a gap from this one's edge. */
    private boolean isClearOf(double ax, double ay, double bx, double by, double gap, double square) {
        double left = Math.min(ax, bx) - gap;
        double right = Math.max(ax, bx) + gap;
        double low = Math.min(ay, by) - gap;
        double top = Math.max(ay, by) + gap;
        for (int i = 0; i < xs.length; i++) {
            int next = i + 1 == xs.length ? 0 : i + 1;
            boolean isFar = Math.max(xs[i], xs[next]) < left
                    || Math.min(xs[i], xs[next]) > right
                    || Math.max(ys[i], ys[next]) < low
                    || Math.min(ys[i], ys[next]) > top;
            if (!isFar && squareDistance(ax, ay, bx, by, xs[i], ys[i], xs[next], ys[next]) < square) {
                return false;
            }
        }
        return true;
    }

    private boolean holds(double x, double y) {
        boolean inside = false;
        for (int i = 0, j = xs.length - 1; i < xs.length; j = i++) {
            boolean crosses = ys[i] > y != ys[j] > y;
            if (crosses && x < (xs[j] - xs[i]) * (y - ys[i]) / (ys[j] - ys[i]) + xs[i]) {
                inside = !inside;
            }
        }
        return inside;
    }

    private static double squareDistance(
            double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy) {
        if (cross(ax, ay, bx, by, cx, cy) * cross(ax, ay, bx, by, dx, dy) < 0
                && cross(cx, cy, dx, dy, ax, ay) * cross(cx, cy, dx, dy, bx, by) < 0) {
            return 0;
        }
        return Math.min(
                Math.min(fromPoint(ax, ay, cx, cy, dx, dy), fromPoint(bx, by, cx, cy, dx, dy)),
                Math.min(fromPoint(cx, cy, ax, ay, bx, by), fromPoint(dx, dy, ax, ay, bx, by)));
    }

    private static double cross(double ax, double ay, double bx, double by, double px, double py) {
        return (bx - ax) * (py - ay) - (by - ay) * (px - ax);
    }

    /** Of a point from a straight line between two others, squared. */
    private static double fromPoint(double px, double py, double ax, double ay, double bx, double by) {
        double length = (bx - ax) * (bx - ax) + (by - ay) * (by - ay);
        double along = length == 0 ? 0 : ((px - ax) * (bx - ax) + (py - ay) * (by - ay)) / length;
        double t = Math.max(0, Math.min(1, along));
        double x = ax + t * (bx - ax) - px;
        double y = ay + t * (by - ay) - py;
        return x * x + y * y;
    }
}
