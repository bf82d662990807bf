package bandwright.pipeline.type;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;

/** The outline of letters in millimetres, y upwards, filled where it winds. Equal letters in equal places are equal. */
public final class Outline {
    private final int[] kinds;
    private final double[] points;

    private Outline(int[] kinds, double[] points) {
        this.kinds = kinds;
        this.points = points;
    }

    /** Of a shape that is brought to its place by a map. */
    public static Outline of(Shape shape, AffineTransform map) {
        int[] kinds = new int[64];
        double[] points = new double[256];
        int kind = 0;
        int point = 0;
        double[] p = new double[6];
        for (PathIterator path = shape.getPathIterator(map); !path.isDone(); path.next()) {
            int segment = path.currentSegment(p);
            int count = count(segment);
            if (kind == kinds.length) {
                kinds = Arrays.copyOf(kinds, 2 * kind);
            }
            if (point + count > points.length) {
                points = Arrays.copyOf(points, 2 * points.length);
            }
            kinds[kind++] = segment;
            System.arraycopy(p, 0, points, point, count);
            point += count;
        }
        return new Outline(Arrays.copyOf(kinds, kind), Arrays.copyOf(points, point));
    }

    private static int count(int segment) {
        return switch (segment) {
            case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> 2;
            case PathIterator.SEG_QUADTO -> 4;
            case PathIterator.SEG_CUBICTO -> 6;
            default -> 0;
        };
    }

    /** The outline of a box. */
    public static Outline of(Box box) {
        Rectangle2D rectangle = new Rectangle2D.Double(
                box.x().mm(), box.y().mm(), box.width().mm(), box.height().mm());
        return of(rectangle, new AffineTransform());
    }

    /** The same carried through a smooth map of the plane, in millimetres; curves stay within 0.01 mm of the true ones. */
    public Outline bent(DoubleBinaryOperator x, DoubleBinaryOperator y) {
        return of(Curves.carried(path(), x, y), new AffineTransform());
    }

    /** The same further right. */
    public Outline shifted(Length right) {
        return of(path(), AffineTransform.getTranslateInstance(right.mm(), 0));
    }

    /** As a path of java.awt, in millimetres. */
    public Path2D path() {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, kinds.length);
        int at = 0;
        for (int kind : kinds) {
            switch (kind) {
                case PathIterator.SEG_MOVETO -> path.moveTo(points[at], points[at + 1]);
                case PathIterator.SEG_LINETO -> path.lineTo(points[at], points[at + 1]);
                case PathIterator.SEG_QUADTO -> path.quadTo(points[at], points[at + 1], points[at + 2], points[at + 3]);
                case PathIterator.SEG_CUBICTO ->
                    path.curveTo(
                            points[at], points[at + 1], points[at + 2], points[at + 3], points[at + 4], points[at + 5]);
                default -> path.closePath();
            }
            at += count(kind);
        }
        return path;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline that && Arrays.equals(kinds, that.kinds) && Arrays.equals(points, that.points);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(kinds) + Arrays.hashCode(points);
    }
}
