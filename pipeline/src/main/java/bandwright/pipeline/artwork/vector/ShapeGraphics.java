package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.limits.Limits;
import bandwright.rules.units.Rgb;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Image;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Notes which shapes are painted in which flat colour, instead of painting them, and counts what painting them would ask
 * for. What is no flat colour is counted, too, but then the drawing isn't plain.
 */
final class ShapeGraphics extends SilentGraphics {
    private final Noted noted;
    private AffineTransform transform;
    private @Nullable Area clip;
    private Paint paint = Color.BLACK;
    private Color background = Color.WHITE;
    private Stroke stroke = new BasicStroke();
    private Composite composite = AlphaComposite.SrcOver;
    private Font font = new Font(Font.DIALOG, Font.PLAIN, 12);

    /** What all graphics that were created from one another have noted. */
    private static final class Noted {
        final List<InkedShape> shapes = new ArrayList<>();
        boolean isPlain = true;
        long points;
        double length;
    }

    /** More than any printed picture needs. */
    static final class TooMuch extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    ShapeGraphics() {
        this(new Noted(), new AffineTransform());
    }

    private ShapeGraphics(Noted noted, AffineTransform transform) {
        this.noted = noted;
        this.transform = transform;
    }

    /** The shapes in the order in which they are painted; empty if something isn't plain. */
    Optional<List<InkedShape>> inked() {
        return noted.isPlain ? Optional.of(List.copyOf(noted.shapes)) : Optional.empty();
    }

    @Override
    public Graphics create() {
        ShapeGraphics child = new ShapeGraphics(noted, new AffineTransform(transform));
        child.clip = clip;
        child.paint = paint;
        child.background = background;
        child.stroke = stroke;
        child.composite = composite;
        child.font = font;
        child.hints.putAll(hints);
        return child;
    }

    @Override
    public void fill(Shape shape) {
        Path2D outline = new Path2D.Double(shape, transform);
        count(outline);
        Rectangle2D bounds = outline.getBounds2D();
        boolean isFlat = paint instanceof Color
                && composite instanceof AlphaComposite alpha
                && alpha.getRule() == AlphaComposite.SRC_OVER;
        noted.isPlain &= isFlat;
        if (!noted.isPlain) {
            noted.shapes.clear();
            return;
        }
        Color colour = (Color) paint;
        AlphaComposite alpha = (AlphaComposite) composite;
        boolean isEmpty = !isFinite(bounds) || (clip != null && !clip.intersects(bounds));
        double opacity = alpha.getAlpha() * colour.getAlpha() / 255.0;
        if (isEmpty || opacity == 0) {
            return;
        }
        noted.shapes.add(new InkedShape(
                outline,
                new Rgb(colour.getRed(), colour.getGreen(), colour.getBlue()),
                opacity,
                clip == null || clip.contains(bounds) ? Optional.empty() : Optional.of(new Path2D.Double(clip))));
    }

    static boolean isFinite(Rectangle2D bounds) {
        return Double.isFinite(bounds.getX())
                && Double.isFinite(bounds.getY())
                && Double.isFinite(bounds.getWidth())
                && Double.isFinite(bounds.getHeight());
    }

    /** Many points, or lines that go to and fro over all of the picture, take a painter long. */
    private void count(Path2D outline) {
        noted.points += points(outline);
        noted.length += length(outline);
        boolean isMuch = noted.points > Limits.SHAPE_POINTS || noted.length > Limits.SHAPE_LENGTH;
        if (isMuch || Thread.currentThread().isInterrupted()) {
            throw new TooMuch();
        }
    }

    private static int points(Path2D path) {
        int count = 0;
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            count++;
        }
        return count;
    }

    /** Of the lines between a path's points, in sides of the artwork; what lies far outside is cut off unpainted. */
    private static double length(Path2D path) {
        double[] p = new double[6];
        double length = 0;
        double x = 0;
        double y = 0;
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(p);
            int last = kind == PathIterator.SEG_CUBICTO ? 4 : kind == PathIterator.SEG_QUADTO ? 2 : 0;
            double step = Math.min(2, Math.hypot(p[last] - x, p[last + 1] - y));
            length += kind == PathIterator.SEG_MOVETO || Double.isNaN(step) ? 0 : step;
            x = p[last];
            y = p[last + 1];
        }
        return length;
    }

    @Override
    public void draw(Shape shape) {
        if (!isFinite(shape.getBounds2D())) {
            return;
        }
        if (stroke instanceof BasicStroke line && line.getDashArray() != null) {
            countDashes(shape, line.getDashArray());
        }
        fill(stroke.createStrokedShape(shape));
    }

    private void countDashes(Shape shape, float[] dashes) {
        double period = 0;
        for (float dash : dashes) {
            period += dash;
        }
        Path2D path = new Path2D.Double(shape);
        Rectangle2D bounds = path.getBounds2D();
        double most = points(path) * (bounds.getWidth() + bounds.getHeight()) / period;
        noted.points += most < Limits.SHAPE_POINTS ? 0 : Limits.SHAPE_POINTS;
        count(new Path2D.Double());
    }

    @Override
    boolean image() {
        noted.isPlain = false;
        return true;
    }

    @Override
    public void clip(@Nullable Shape shape) {
        if (shape == null) {
            return;
        }
        Path2D outline = new Path2D.Double(shape, transform);
        if (points(outline) > Limits.CLIP_POINTS || !isFinite(outline.getBounds2D())) {
            noted.isPlain = false;
            return;
        }
        Area area = new Area(outline);
        if (clip != null) {
            area.intersect(clip);
        }
        clip = area;
    }

    @Override
    public void setClip(@Nullable Shape shape) {
        clip = null;
        clip(shape);
    }

    @Override
    public @Nullable Shape getClip() {
        if (clip == null) {
            return null;
        }
        try {
            return transform.createInverse().createTransformedShape(clip);
        } catch (NoninvertibleTransformException e) {
            return new Area();
        }
    }

    @Override
    public @Nullable Rectangle getClipBounds() {
        Shape shape = getClip();
        return shape == null ? null : shape.getBounds();
    }

    @Override
    public void transform(AffineTransform more) {
        transform.concatenate(more);
    }

    @Override
    public void setTransform(AffineTransform to) {
        transform = new AffineTransform(to);
    }

    @Override
    public AffineTransform getTransform() {
        return new AffineTransform(transform);
    }

    @Override
    public void setPaint(@Nullable Paint to) {
        paint = to == null ? paint : to;
    }

    @Override
    public Paint getPaint() {
        return paint;
    }

    @Override
    public void setStroke(Stroke to) {
        stroke = to;
    }

    @Override
    public Stroke getStroke() {
        return stroke;
    }

    @Override
    public void setComposite(Composite to) {
        composite = to;
    }

    @Override
    public Composite getComposite() {
        return composite;
    }

    @Override
    public void setBackground(Color to) {
        background = to;
    }

    @Override
    public Color getBackground() {
        return background;
    }

    @Override
    public void setFont(@Nullable Font to) {
        font = to == null ? font : to;
    }

    @Override
    public Font getFont() {
        return font;
    }

    @Override
    public FontMetrics getFontMetrics(Font of) {
        return new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB)
                .createGraphics()
                .getFontMetrics(of);
    }

    @Override
    public boolean drawImage(Image image, AffineTransform map, ImageObserver observer) {
        return image();
    }
}
