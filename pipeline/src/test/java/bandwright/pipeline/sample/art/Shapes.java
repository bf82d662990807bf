package bandwright.pipeline.sample.art;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Locale;
import java.util.Scanner;

/** The shapes that pictures are cut from. A path is written as in SVG, capitals only: {@code M0 0 L4 0 C4 2 2 4 0 4 Z}. */
final class Shapes {
    private Shapes() {}

    static Shape disc(double x, double y, double radius) {
        return oval(x, y, radius, radius);
    }

    static Shape oval(double x, double y, double across, double up) {
        return new Ellipse2D.Double(x - across, y - up, 2 * across, 2 * up);
    }

    static Shape box(double x, double y, double width, double height) {
        return new Rectangle2D.Double(x, y, width, height);
    }

    static Shape soft(double x, double y, double width, double height, double corner) {
        return new RoundRectangle2D.Double(x, y, width, height, 2 * corner, 2 * corner);
    }

    static Path2D path(String drawn) {
        Path2D path = new Path2D.Double();
        try (Scanner words = new Scanner(drawn.replaceAll("([MLCQZ])", " $1 "))) {
            words.useLocale(Locale.ROOT);
            String verb = "M";
            while (words.hasNext()) {
                verb = words.hasNext("[MLCQZ]") ? words.next() : verb;
                append(path, verb, words);
            }
        }
        return path;
    }

    private static void append(Path2D path, String verb, Scanner xy) {
        switch (verb) {
            case "M" -> path.moveTo(xy.nextDouble(), xy.nextDouble());
            case "L" -> path.lineTo(xy.nextDouble(), xy.nextDouble());
            case "Q" -> path.quadTo(xy.nextDouble(), xy.nextDouble(), xy.nextDouble(), xy.nextDouble());
            case "C" ->
                path.curveTo(
                        xy.nextDouble(),
                        xy.nextDouble(),
                        xy.nextDouble(),
                        xy.nextDouble(),
                        xy.nextDouble(),
                        xy.nextDouble());
            default -> path.closePath();
        }
    }

    /** The shape grown by that factor about the origin, turned, and moved; a factor below 0 flips it left to right. */
    static Shape at(double x, double y, double factor, double degrees, Shape shape) {
        AffineTransform move = AffineTransform.getTranslateInstance(x, y);
        move.rotate(Math.toRadians(degrees));
        move.scale(factor, Math.abs(factor));
        return move.createTransformedShape(shape);
    }

    static Area cut(Shape shape, Shape away) {
        Area rest = new Area(shape);
        rest.subtract(new Area(away));
        return rest;
    }

    /** A closed line of that mean radius that waves in and out: an island, a puff of smoke. */
    static Path2D blob(double x, double y, double across, double up, double wild, int seed) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i <= 90; i++) {
            double a = Math.PI * 2 * i / 90;
            double r = 1
                    + wild * Math.sin(2 * a + seed)
                    + wild * 0.7 * Math.sin(3 * a + seed * 2.3)
                    + wild * 0.5 * Math.sin(5 * a + seed * 4.1)
                    + wild * 0.25 * Math.sin(9 * a + seed * 1.7);
            double px = x + across * r * Math.cos(a);
            double py = y + up * r * Math.sin(a);
            if (i == 0) {
                path.moveTo(px, py);
            } else {
                path.lineTo(px, py);
            }
        }
        path.closePath();
        return path;
    }
}
