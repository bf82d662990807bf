package bandwright.pipeline.type;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Length;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines that are bent for a cone, against the same outlines cut into ten thousand points that are bent one by one. */
class OutlineBentTest {
    private static final Sector MUG =
            new Sector(Length.mm(248.83), Length.mm(341.67), Length.mm(295.25), Math.toRadians(20.446), true);
    private static final double CLOSE = 0.02;

    @Test
    void aStraightBaselineBecomesAnArc() {
        Path2D line = new Path2D.Double();
        line.moveTo(0, 10);
        line.lineTo(200, 10);
        Outline bent = Outline.of(line, new AffineTransform()).bent(MUG::x, MUG::y);
        for (double[] point : points(bent.path())) {
            double radius = Math.hypot(point[0] - MUG.apexX(), point[1] - MUG.apexY());
            assertThat(radius).isBetween(258.83 - CLOSE, 258.83 + CLOSE);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void everyCurveStaysWithinAFiftiethOfAMillimetre(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Path2D path = new Path2D.Double();
        path.moveTo(random.nextDouble() * 200, random.nextDouble() * 90);
        for (int i = 0; i < 6; i++) {
            double[] p = random.doubles(6, 0, 90).toArray();
            switch (random.nextInt(3)) {
                case 0 -> path.lineTo(2 * p[0], p[1]);
                case 1 -> path.quadTo(2 * p[0], p[1], 2 * p[2], p[3]);
                default -> path.curveTo(2 * p[0], p[1], 2 * p[2], p[3], 2 * p[4], p[5]);
            }
        }
        path.closePath();
        path.append(new Ellipse2D.Double(20, 20, 3, 5), false);
        List<double[]> bent = points(
                Outline.of(path, new AffineTransform()).bent(MUG::x, MUG::y).path());
        List<double[]> meant = new ArrayList<>();
        points(path).forEach(point -> meant.add(new double[] {MUG.x(point[0], point[1]), MUG.y(point[0], point[1])}));
        assertThat(farthest(bent, meant)).as("seed %d", seed).isLessThan(CLOSE);
        assertThat(farthest(meant, bent)).as("seed %d", seed).isLessThan(CLOSE);
    }

    @Test
    void theMeasureSeesAStraightStrip() {
        Path2D line = new Path2D.Double();
        line.moveTo(0, 10);
        line.lineTo(200, 10);
        List<double[]> bent = points(
                Outline.of(line, new AffineTransform()).bent(MUG::x, MUG::y).path());
        assertThat(farthest(bent, points(line))).isGreaterThan(5);
    }

    /** The largest distance of one's points from the other's nearest ones, which lie much closer than what is measured. */
    private static double farthest(List<double[]> some, List<double[]> others) {
        double most = 0;
        for (int i = 0; i < some.size(); i += 37) {
            double[] point = some.get(i);
            double nearest = Double.MAX_VALUE;
            for (int j = 0; j + 1 < others.size(); j++) {
                nearest = Math.min(nearest, distance(point, others.get(j), others.get(j + 1)));
            }
            most = Math.max(most, nearest);
        }
        return most;
    }

    private static double distance(double[] p, double[] a, double[] b) {
        double dx = b[0] - a[0];
        double dy = b[1] - a[1];
        double length = dx * dx + dy * dy;
        // A jump to the next figure is no part of the outline.
        double t = length == 0 || length > 4 ? 0 : ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / length;
        double s = Math.max(0, Math.min(1, t));
        return Math.hypot(a[0] + s * dx - p[0], a[1] + s * dy - p[1]);
    }

    /** Points on the path, a thousand a segment. */
    private static List<double[]> points(Path2D path) {
        List<double[]> points = new ArrayList<>();
        double[] p = new double[6];
        double[] start = {0, 0};
        double[] at = start;
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(p);
            double[] c =
                    switch (kind) {
                        case PathIterator.SEG_MOVETO -> new double[] {p[0], p[1]};
                        case PathIterator.SEG_LINETO -> new double[] {at[0], at[1], p[0], p[1]};
                        case PathIterator.SEG_QUADTO -> new double[] {at[0], at[1], p[0], p[1], p[2], p[3]};
                        case PathIterator.SEG_CUBICTO ->
                            new double[] {at[0], at[1], p[0], p[1], p[2], p[3], p[4], p[5]};
                        default -> new double[] {at[0], at[1], start[0], start[1]};
                    };
            at = new double[] {c[c.length - 2], c[c.length - 1]};
            if (kind == PathIterator.SEG_MOVETO) {
                start = at;
            }
            for (int k = 0; k <= 1000; k++) {
                points.add(casteljau(c, k / 1000.0));
            }
        }
        return points;
    }

    private static double[] casteljau(double[] controls, double t) {
        double[] c = controls.clone();
        for (int n = c.length / 2 - 1; n > 0; n--) {
            for (int k = 0; k < 2 * n; k++) {
                c[k] = c[k] + (c[k + 2] - c[k]) * t;
            }
        }
        return new double[] {c[0], c[1]};
    }
}
