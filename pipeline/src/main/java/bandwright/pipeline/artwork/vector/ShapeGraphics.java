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
 * Notes which shapes are painted in which flat colour, instead of painting them. Whatever is no flat colour ends it with
 * {@link NotPlain}.
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
        long points;
    }

    /** The artwork has something that is no shape of a flat colour. */
    static final class NotPlain extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotPlain() {
            super(null, null, false, false);
        }
    }

    ShapeGraphics() {
        this(new Noted(), new AffineTransform());
    }

    private ShapeGraphics(Noted noted, AffineTransform transform) {
        this.noted = noted;
        this.transform = transform;
    }

    List<InkedShape> inked() {
        return List.copyOf(noted.shapes);
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
        noted.points += points(outline);
        if (noted.points > Limits.SHAPE_POINTS || Thread.currentThread().isInterrupted()) {
            throw new NotPlain();
        }
        Rectangle2D bounds = outline.getBounds2D();
        if (!(paint instanceof Color colour) || !(composite instanceof AlphaComposite alpha)) {
            throw new NotPlain();
        }
        if (alpha.getRule() != AlphaComposite.SRC_OVER) {
            throw new NotPlain();
        }
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

    private static int points(Path2D path) {
        int count = 0;
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            count++;
        }
        return count;
    }

    @Override
    public void draw(Shape shape) {
        fill(stroke.createStrokedShape(shape));
    }

    @Override
    boolean image() {
        throw new NotPlain();
    }

    @Override
    public void clip(@Nullable Shape shape) {
        if (shape == null) {
            return;
        }
        Path2D outline = new Path2D.Double(shape, transform);
        if (points(outline) > Limits.CLIP_POINTS || !isFinite(outline.getBounds2D())) {
            throw new NotPlain();
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
