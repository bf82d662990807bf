package bandwright.pipeline.sample.art;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.function.ToDoubleBiFunction;

/**
 * A drawing surface measured in tenths of a millimetre on the cup, y downwards, and the pens of one hand: flat shapes,
 * round lines and halftone dots. 2250 x 1000 at scale 1 has 254 pixels an inch on a mug.
 */
final class Canvas {
    private final double width;
    private final double height;
    private final BufferedImage image;
    private final Graphics2D pen;
    private double left;

    private Canvas(double width, double height, double scale, int kind) {
        this.width = width;
        this.height = height;
        image = new BufferedImage((int) Math.round(width * scale), (int) Math.round(height * scale), kind);
        pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(scale, scale);
    }

    /** A surface covered with one ink. */
    static Canvas on(int rgb, double width, double height, double scale) {
        Canvas canvas = new Canvas(width, height, scale, BufferedImage.TYPE_INT_RGB);
        return canvas.fill(rgb, canvas.all());
    }

    /** A surface of nothing: the blank's own colour stands behind what is drawn. */
    static Canvas clear(double width, double height, double scale) {
        return new Canvas(width, height, scale, BufferedImage.TYPE_INT_ARGB);
    }

    BufferedImage image() {
        return image;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    Shape all() {
        return new Rectangle2D.Double(0, 0, width, height);
    }

    /** Counts from that far right from now on: a square picture moves into the middle of a wide one. */
    Canvas from(double across) {
        left = across;
        return this;
    }

    private Shape moved(Shape shape) {
        return Shapes.at(left, 0, 1, 0, shape);
    }

    Canvas fill(int rgb, Shape shape) {
        pen.setPaint(new Color(rgb));
        pen.fill(moved(shape));
        return this;
    }

    Canvas line(int rgb, double wide, Shape shape) {
        pen.setPaint(new Color(rgb));
        pen.setStroke(round(wide));
        pen.draw(moved(shape));
        return this;
    }

    /** The part of the first shape that lies on the second. */
    Canvas within(int rgb, Shape shape, Shape bounds) {
        Area part = new Area(shape);
        part.intersect(new Area(bounds));
        return fill(rgb, part);
    }

    /**
     * Halftone: dots on a screen of 45 degrees, so large that they cover the share of the paper that the tone asks for at
     * their place.
     */
    Canvas dots(int rgb, double pitch, Shape shape, ToDoubleBiFunction<Double, Double> tone) {
        Rectangle2D box = moved(shape).getBounds2D().createIntersection(all().getBounds2D());
        Rectangle place = pen.getTransform().createTransformedShape(box).getBounds();
        place.grow(1, 1);
        BufferedImage dots = new Halftone(place, pen.getTransform().getScaleX(), rgb)
                .through(
                        moved(shape),
                        pitch,
                        (x, y) -> tone.applyAsDouble(x - left, y),
                        layer -> layer.setRenderingHints(pen.getRenderingHints()));
        AffineTransform units = pen.getTransform();
        pen.setTransform(new AffineTransform());
        pen.drawImage(dots, place.x, place.y, null);
        pen.setTransform(units);
        return this;
    }

    static BasicStroke round(double wide) {
        return new BasicStroke((float) wide, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
}
