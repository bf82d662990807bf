package bandwright.pipeline.artwork.vector;

import de.rototor.pdfbox.graphics2d.IPdfBoxGraphics2DColorMapper;
import de.rototor.pdfbox.graphics2d.IPdfBoxGraphics2DDrawControl;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DLosslessImageEncoder;
import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.MultipleGradientPaint;
import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.RadialGradientPaint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * An SVG as a form of a PDF. Shapes stay shapes: flat colours, and gradients that PDF has too. Only a shape that is
 * painted by a mask, a pattern or a repeated gradient becomes pixels, and a group that is blurred or faded as a whole.
 */
final class SvgForm implements IPdfBoxGraphics2DDrawControl {
    /** Units of the longer side, and pixels where there have to be some: on a mug about 360 an inch. [J] */
    private static final double LONGER_SIDE = 3000;

    private final Rectangle all;

    private SvgForm(Rectangle all) {
        this.all = all;
    }

    static PDFormXObject of(SvgArtwork artwork, PDDocument document, COSArray srgb) throws IOException {
        double units = LONGER_SIDE / Math.max(artwork.width(), artwork.height());
        float width = (float) (artwork.width() * units);
        float height = (float) (artwork.height() * units);
        PDColorSpace space = PDColorSpace.create(srgb);
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
        g.setColorMapper(mapper(space));
        g.setImageEncoder(new Encoder(space));
        g.setDrawControl(new SvgForm(new Rectangle((int) Math.ceil(width), (int) Math.ceil(height))));
        g.scale(units, units);
        try {
            artwork.draw(g);
        } finally {
            g.disposeDanglingChildGraphics();
            g.dispose();
        }
        PDFormXObject form = g.getXFormObject();
        form.setMatrix(AffineTransform.getScaleInstance(1.0 / width, 1.0 / height));
        return form;
    }

    private static IPdfBoxGraphics2DColorMapper mapper(PDColorSpace space) {
        return (colour, about) -> {
            float[] parts = colour.getRGBColorComponents(null);
            for (int i = 0; i < parts.length; i++) {
                parts[i] = Math.round(parts[i] * 10_000) / 10_000f;
            }
            return new PDColor(parts, space);
        };
    }

    /** Pictures get the same colour space as flat colours. */
    private static final class Encoder extends PdfBoxGraphics2DLosslessImageEncoder {
        private final PDColorSpace space;

        Encoder(PDColorSpace space) {
            this.space = space;
        }

        @Override
        public PDImageXObject encodeImage(
                PDDocument document,
                org.apache.pdfbox.pdmodel.PDPageContentStream content,
                java.awt.Image image,
                IPdfBoxGraphics2DImageEncoderEnv about) {
            PDImageXObject encoded = super.encodeImage(document, content, image, about);
            try {
                if (encoded.getColorSpace().getNumberOfComponents() == 3) {
                    encoded.setColorSpace(space);
                }
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
            return encoded;
        }
    }

    @Override
    public Shape transformShapeBeforeFill(Shape shape, IDrawControlEnv about) {
        return painted(shape, shape, about);
    }

    @Override
    public Shape transformShapeBeforeDraw(Shape shape, IDrawControlEnv about) {
        return painted(shape, about.getGraphics().getStroke().createStrokedShape(shape), about);
    }

    /** The shape if PDF can paint it; else nothing, and its pixels have been drawn in its stead. */
    @SuppressWarnings("NullAway") // the library takes null for nothing
    private Shape painted(Shape shape, Shape inked, IDrawControlEnv about) {
        if (!ShapeGraphics.isFinite(shape.getBounds2D())) {
            return null;
        }
        if (isOfPdf(about.getPaint())) {
            return cubic(shape);
        }
        pixels(inked, about.getPaint(), about.getGraphics());
        return null;
    }

    private static boolean isOfPdf(Paint paint) {
        if (paint instanceof MultipleGradientPaint gradient) {
            boolean isKnown = paint instanceof LinearGradientPaint || paint instanceof RadialGradientPaint;
            return isKnown
                    && isEven(gradient.getTransform())
                    && gradient.getCycleMethod() == MultipleGradientPaint.CycleMethod.NO_CYCLE;
        }
        return paint instanceof Color || paint instanceof GradientPaint;
    }

    /** Stretched more one way than the other, a gradient's lines would no longer stand upright on its direction. */
    private static boolean isEven(AffineTransform map) {
        double across = Math.hypot(map.getScaleX(), map.getShearY());
        double down = Math.hypot(map.getShearX(), map.getScaleY());
        double product = map.getScaleX() * map.getShearX() + map.getShearY() * map.getScaleY();
        return Math.abs(across - down) < 1e-3 * across && Math.abs(product) < 1e-3 * across * down;
    }

    /** The same outline without quadratic curves: their control point stands at two thirds from either end. */
    private static Path2D cubic(Shape shape) {
        Path2D out = new Path2D.Double();
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        PathIterator path = shape.getPathIterator(null);
        out.setWindingRule(path.getWindingRule());
        for (; !path.isDone(); path.next()) {
            switch (path.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> out.moveTo(p[0], p[1]);
                case PathIterator.SEG_LINETO -> out.lineTo(p[0], p[1]);
                case PathIterator.SEG_QUADTO ->
                    out.curveTo(
                            x + (p[0] - x) * 2 / 3,
                            y + (p[1] - y) * 2 / 3,
                            p[2] + (p[0] - p[2]) * 2 / 3,
                            p[3] + (p[1] - p[3]) * 2 / 3,
                            p[2],
                            p[3]);
                case PathIterator.SEG_CUBICTO -> out.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
                default -> out.closePath();
            }
            Point2D at = out.getCurrentPoint();
            x = at.getX();
            y = at.getY();
        }
        return out;
    }

    private void pixels(Shape shape, Paint paint, PdfBoxGraphics2D g) {
        AffineTransform toUnits = g.getTransform();
        Shape inUnits = toUnits.createTransformedShape(shape);
        Rectangle2D bounds = inUnits.getBounds2D().createIntersection(all);
        if (g.getClip() != null) {
            Shape clip = toUnits.createTransformedShape(g.getClip());
            bounds = bounds.createIntersection(clip.getBounds2D());
        }
        Rectangle box = bounds.getBounds();
        if (bounds.isEmpty() || box.isEmpty()) {
            return;
        }
        BufferedImage image = new BufferedImage(box.width, box.height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D onImage = image.createGraphics();
        VectorArtwork.smooth(onImage);
        onImage.translate(-box.x, -box.y);
        onImage.fill(inUnits);
        onImage.setTransform(new AffineTransform());
        onImage.setComposite(AlphaComposite.SrcIn);
        onImage.drawImage(tile(paint, box, shape.getBounds2D(), toUnits), 0, 0, null);
        onImage.dispose();
        Graphics2D child = g.create();
        child.setTransform(new AffineTransform());
        child.drawImage(image, box.x, box.y, null);
        child.dispose();
    }

    /** The paint itself in a box of units: asked for it in place, as a mask knows no other. */
    private static BufferedImage tile(Paint paint, Rectangle box, Rectangle2D bounds, AffineTransform toUnits) {
        PaintContext context =
                paint.createContext(ColorModel.getRGBdefault(), box, bounds, toUnits, new RenderingHints(Map.of()));
        try {
            Raster raster = context.getRaster(box.x, box.y, box.width, box.height);
            ColorModel model = context.getColorModel();
            WritableRaster tile = raster.createCompatibleWritableRaster(box.width, box.height);
            tile.setRect(raster.createChild(raster.getMinX(), raster.getMinY(), box.width, box.height, 0, 0, null));
            return new BufferedImage(model, tile, model.isAlphaPremultiplied(), null);
        } finally {
            context.dispose();
        }
    }

    @Override
    public void afterShapeFill(Shape shape, IDrawControlEnv about) {
        // all is done before
    }

    @Override
    public void afterShapeDraw(Shape shape, IDrawControlEnv about) {
        // all is done before
    }
}
