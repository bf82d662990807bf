package bandwright.pipeline.sample;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;

/** A drawing surface measured in its own units, y downwards, and the few pens that the sample pictures need. */
final class Canvas {
    private final BufferedImage image;
    private final Graphics2D pen;

    /** A surface of that many units, drawn at that many pixels a unit. */
    Canvas(double width, double height, double scale, boolean clear) {
        int kind = clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
        image = new BufferedImage((int) Math.round(width * scale), (int) Math.round(height * scale), kind);
        pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(scale, scale);
    }

    BufferedImage image() {
        return image;
    }

    Canvas fill(int rgb, Shape shape) {
        return fill(new Color(rgb), shape);
    }

    Canvas fill(Color colour, Shape shape) {
        pen.setPaint(colour);
        pen.fill(shape);
        return this;
    }

    /** Fills from one colour above to another below. */
    Canvas shade(Color above, Color below, Shape shape) {
        Rectangle2D box = shape.getBounds2D();
        pen.setPaint(new GradientPaint(0, (float) box.getMinY(), above, 0, (float) box.getMaxY(), below));
        pen.fill(shape);
        return this;
    }

    Canvas line(int rgb, double width, Shape shape) {
        pen.setPaint(new Color(rgb));
        pen.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(shape);
        return this;
    }

    Canvas clip(Shape shape) {
        pen.setClip(shape);
        return this;
    }

    static Shape disc(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    static Shape oval(double x, double y, double rx, double ry) {
        return new Ellipse2D.Double(x - rx, y - ry, 2 * rx, 2 * ry);
    }

    static Shape box(double x, double y, double width, double height) {
        return new Rectangle2D.Double(x, y, width, height);
    }

    static Shape soft(double x, double y, double width, double height, double corner) {
        return new RoundRectangle2D.Double(x, y, width, height, 2 * corner, 2 * corner);
    }

    /** A closed outline through the points, x and y in turn. */
    static Path2D outline(double... xy) {
        Path2D path = open(xy);
        path.closePath();
        return path;
    }

    /** An open line through the points, x and y in turn. */
    static Path2D open(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        return path;
    }

    /** A path from the first point along cubic curves: each takes two controls and an end. */
    static Path2D curve(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i + 5 < xy.length; i += 6) {
            path.curveTo(xy[i], xy[i + 1], xy[i + 2], xy[i + 3], xy[i + 4], xy[i + 5]);
        }
        return path;
    }

    /** The shape grown by that factor about the origin, turned, and moved. */
    static Shape at(Shape shape, double x, double y, double factor, double degrees) {
        AffineTransform move = AffineTransform.getTranslateInstance(x, y);
        move.rotate(Math.toRadians(degrees));
        move.scale(factor, Math.abs(factor));
        return move.createTransformedShape(shape);
    }
}
