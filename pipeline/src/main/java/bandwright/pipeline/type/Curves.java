package bandwright.pipeline.type;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.function.DoubleBinaryOperator;

/**
 * Carries the curves of a path through a smooth map of the plane. Each becomes a cubic whose ends and whose directions at
 * the ends are exact; where it would leave the true curve by more than a hundredth of a millimetre it is halved first.
 */
final class Curves {
    /** In millimetres. */
    private static final double TOLERANCE = 0.01;

    /** Halved no further than that: a millionth of the curve. */
    private static final int DEEPEST = 20;

    /** Small enough for a slope, large enough for its digits, in millimetres. */
    private static final double STEP = 1e-4;

    private final DoubleBinaryOperator x;
    private final DoubleBinaryOperator y;
    private final Path2D out = new Path2D.Double(Path2D.WIND_NON_ZERO);

    private Curves(DoubleBinaryOperator x, DoubleBinaryOperator y) {
        this.x = x;
        this.y = y;
    }

    static Path2D carried(Path2D path, DoubleBinaryOperator x, DoubleBinaryOperator y) {
        Curves curves = new Curves(x, y);
        curves.carry(path);
        return curves.out;
    }

    private void carry(Path2D path) {
        double[] p = new double[6];
        Point start = new Point(0, 0);
        Point at = start;
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            switch (i.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> {
                    start = new Point(p[0], p[1]);
                    at = start;
                    out.moveTo(mapped(at).x, mapped(at).y);
                }
                case PathIterator.SEG_LINETO -> {
                    Point to = new Point(p[0], p[1]);
                    curve(Cubic.line(at, to), 0);
                    at = to;
                }
                case PathIterator.SEG_QUADTO -> {
                    Point to = new Point(p[2], p[3]);
                    curve(Cubic.quadratic(at, new Point(p[0], p[1]), to), 0);
                    at = to;
                }
                case PathIterator.SEG_CUBICTO -> {
                    Point to = new Point(p[4], p[5]);
                    curve(new Cubic(at, new Point(p[0], p[1]), new Point(p[2], p[3]), to), 0);
                    at = to;
                }
                default -> {
                    if (!at.equals(start)) {
                        curve(Cubic.line(at, start), 0);
                    }
                    out.closePath();
                    at = start;
                }
            }
        }
    }

    private void curve(Cubic flat, int depth) {
        Cubic bent = new Cubic(
                mapped(flat.a),
                direction(flat.a, flat.b.minus(flat.a)).plus(mapped(flat.a)),
                mapped(flat.d).minus(direction(flat.d, flat.d.minus(flat.c))),
                mapped(flat.d));
        boolean isClose = isClose(flat, bent, 0.25) && isClose(flat, bent, 0.5) && isClose(flat, bent, 0.75);
        if (isClose || depth == DEEPEST) {
            out.curveTo(bent.b.x, bent.b.y, bent.c.x, bent.c.y, bent.d.x, bent.d.y);
            return;
        }
        curve(flat.firstHalf(), depth + 1);
        curve(flat.secondHalf(), depth + 1);
    }

    private boolean isClose(Cubic flat, Cubic bent, double t) {
        Point meant = mapped(flat.at(t));
        Point drawn = bent.at(t);
        return Math.hypot(meant.x - drawn.x, meant.y - drawn.y) <= TOLERANCE;
    }

    private Point mapped(Point p) {
        return new Point(x.applyAsDouble(p.x, p.y), y.applyAsDouble(p.x, p.y));
    }

    /** What a small step at a point becomes, by central differences. */
    private Point direction(Point at, Point step) {
        Point dx = mapped(new Point(at.x + STEP, at.y))
                .minus(mapped(new Point(at.x - STEP, at.y)))
                .times(1 / (2 * STEP));
        Point dy = mapped(new Point(at.x, at.y + STEP))
                .minus(mapped(new Point(at.x, at.y - STEP)))
                .times(1 / (2 * STEP));
        return dx.times(step.x).plus(dy.times(step.y));
    }

    private record Point(double x, double y) {
        Point plus(Point other) {
            return new Point(x + other.x, y + other.y);
        }

        Point minus(Point other) {
            return new Point(x - other.x, y - other.y);
        }

        Point times(double factor) {
            return new Point(x * factor, y * factor);
        }

        Point middle(Point other) {
            return plus(other).times(0.5);
        }
    }

    /** A Bezier curve from a to d. */
    private record Cubic(Point a, Point b, Point c, Point d) {
        static Cubic line(Point from, Point to) {
            Point third = to.minus(from).times(1 / 3.0);
            return new Cubic(from, from.plus(third), to.minus(third), to);
        }

        static Cubic quadratic(Point from, Point control, Point to) {
            return new Cubic(
                    from,
                    from.plus(control.minus(from).times(2 / 3.0)),
                    to.plus(control.minus(to).times(2 / 3.0)),
                    to);
        }

        Point at(double t) {
            double s = 1 - t;
            return a.times(s * s * s)
                    .plus(b.times(3 * s * s * t))
                    .plus(c.times(3 * s * t * t))
                    .plus(d.times(t * t * t));
        }

        Cubic firstHalf() {
            Point ab = a.middle(b);
            Point abc = ab.middle(b.middle(c));
            return new Cubic(a, ab, abc, at(0.5));
        }

        Cubic secondHalf() {
            Point cd = c.middle(d);
            Point bcd = b.middle(c).middle(cd);
            return new Cubic(at(0.5), bcd, cd, d);
        }
    }
}
