package bandwright.pipeline.artwork.vector;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Polygon;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Everything that java.awt can be asked to paint, led back to filling and stroking shapes and to pictures. */
abstract class SilentGraphics extends Graphics2D {
    final RenderingHints hints = new RenderingHints(Map.of());

    /** A picture is drawn. */
    abstract boolean image();

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        draw(new Line2D.Double(x1, y1, x2, y2));
    }

    @Override
    public void fillRect(int x, int y, int width, int height) {
        fill(new Rectangle(x, y, width, height));
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {
        // nothing has been painted, so nothing has to be cleared
    }

    @Override
    public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        draw(new RoundRectangle2D.Double(x, y, width, height, arcWidth, arcHeight));
    }

    @Override
    public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        fill(new RoundRectangle2D.Double(x, y, width, height, arcWidth, arcHeight));
    }

    @Override
    public void drawOval(int x, int y, int width, int height) {
        draw(new Ellipse2D.Double(x, y, width, height));
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        fill(new Ellipse2D.Double(x, y, width, height));
    }

    @Override
    public void drawArc(int x, int y, int width, int height, int start, int sweep) {
        draw(new Arc2D.Double(x, y, width, height, start, sweep, Arc2D.OPEN));
    }

    @Override
    public void fillArc(int x, int y, int width, int height, int start, int sweep) {
        fill(new Arc2D.Double(x, y, width, height, start, sweep, Arc2D.PIE));
    }

    @Override
    public void drawPolyline(int[] xs, int[] ys, int count) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < count; i++) {
            if (i == 0) {
                path.moveTo(xs[i], ys[i]);
            } else {
                path.lineTo(xs[i], ys[i]);
            }
        }
        draw(path);
    }

    @Override
    public void drawPolygon(int[] xs, int[] ys, int count) {
        draw(new Polygon(xs, ys, count));
    }

    @Override
    public void fillPolygon(int[] xs, int[] ys, int count) {
        fill(new Polygon(xs, ys, count));
    }

    @Override
    public void drawString(String text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(String text, float x, float y) {
        if (!text.isEmpty()) {
            drawGlyphVector(getFont().createGlyphVector(getFontRenderContext(), text), x, y);
        }
    }

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        fill(new TextLayout(text, getFontRenderContext()).getOutline(AffineTransform.getTranslateInstance(x, y)));
    }

    @Override
    public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
        fill(glyphs.getOutline(x, y));
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return new FontRenderContext(null, true, true);
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        return image();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        return image();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, Color background, ImageObserver observer) {
        return image();
    }

    @Override
    public boolean drawImage(
            Image image, int x, int y, int width, int height, Color background, ImageObserver observer) {
        return image();
    }

    @Override
    public boolean drawImage(
            Image image,
            int dx1,
            int dy1,
            int dx2,
            int dy2,
            int sx1,
            int sy1,
            int sx2,
            int sy2,
            ImageObserver observer) {
        return image();
    }

    @Override
    public boolean drawImage(
            Image image,
            int dx1,
            int dy1,
            int dx2,
            int dy2,
            int sx1,
            int sy1,
            int sx2,
            int sy2,
            Color background,
            ImageObserver observer) {
        return image();
    }

    @Override
    public void drawImage(BufferedImage image, BufferedImageOp op, int x, int y) {
        image();
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform map) {
        image();
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform map) {
        image();
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        image();
    }

    @Override
    public boolean hit(Rectangle rectangle, Shape shape, boolean onStroke) {
        return false;
    }

    @Override
    @SuppressWarnings("NullAway") // an off-screen surface of no device may have none
    public @Nullable GraphicsConfiguration getDeviceConfiguration() {
        return null;
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, Object value) {
        if (value == null) {
            hints.remove(key);
        } else {
            hints.put(key, value);
        }
    }

    @Override
    public @Nullable Object getRenderingHint(RenderingHints.Key key) {
        return hints.get(key);
    }

    @Override
    public void setRenderingHints(Map<?, ?> to) {
        hints.clear();
        addRenderingHints(to);
    }

    @Override
    public void addRenderingHints(Map<?, ?> more) {
        hints.putAll(more);
    }

    @Override
    public RenderingHints getRenderingHints() {
        return (RenderingHints) hints.clone();
    }

    @Override
    public void translate(int x, int y) {
        translate((double) x, (double) y);
    }

    @Override
    public void translate(double x, double y) {
        transform(AffineTransform.getTranslateInstance(x, y));
    }

    @Override
    public void rotate(double angle) {
        transform(AffineTransform.getRotateInstance(angle));
    }

    @Override
    public void rotate(double angle, double x, double y) {
        transform(AffineTransform.getRotateInstance(angle, x, y));
    }

    @Override
    public void scale(double x, double y) {
        transform(AffineTransform.getScaleInstance(x, y));
    }

    @Override
    public void shear(double x, double y) {
        transform(AffineTransform.getShearInstance(x, y));
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {
        clip(new Rectangle2D.Double(x, y, width, height));
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        setClip(new Rectangle2D.Double(x, y, width, height));
    }

    @Override
    public @Nullable Color getColor() {
        return getPaint() instanceof Color colour ? colour : null;
    }

    @Override
    public void setColor(@Nullable Color colour) {
        if (colour != null) {
            setPaint(colour);
        }
    }

    @Override
    public void setPaintMode() {
        setComposite(java.awt.AlphaComposite.SrcOver);
    }

    @Override
    public void setXORMode(Color colour) {
        image();
    }

    @Override
    public void dispose() {
        // nothing is held
    }
}
