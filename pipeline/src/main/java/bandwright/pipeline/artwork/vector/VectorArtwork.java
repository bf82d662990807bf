package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.ArtworkFile;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/**
 * Artwork that is drawn from shapes, opened: draws itself at any size, becomes a part of a PDF, or says its shapes. An
 * SVG of 40 x 30 mm is 113.4 x 85.0 points.
 */
public abstract sealed class VectorArtwork implements Closeable permits SvgArtwork, PdfArtwork {
    /** Of one drawing in pixels, so that a small machine has room for it. */
    private static final long MOST_PIXELS = 64_000_000;

    public static VectorArtwork open(ArtworkFile artwork) throws IOException {
        return open(artwork.kind(), artwork.path());
    }

    static VectorArtwork open(ArtworkFile.Kind kind, Path path) throws IOException {
        return kind == ArtworkFile.Kind.SVG ? SvgArtwork.open(path) : PdfArtwork.open(path);
    }

    /** Points across the artwork as a person sees it. */
    abstract double width();

    abstract double height();

    /** Draws it in points, y downwards from its upper left corner. */
    abstract void draw(Graphics2D g) throws IOException;

    /** Draws it over all of an image, which is transparent so far. */
    abstract void draw(BufferedImage image) throws IOException;

    /**
     * As a form of that document that is drawn in the unit square.
     *
     * @param srgb the document's space for colours that the artwork has in sRGB
     */
    public abstract PDFormXObject form(PDDocument document, COSArray srgb) throws IOException;

    /**
     * Its shapes in the unit square, y upwards, in the order in which they are painted; empty if it isn't made of flat
     * colours alone: gradients, pictures, masks and blended layers have no outline that could be bent.
     */
    public Optional<List<InkedShape>> shapes() throws IOException {
        ShapeGraphics shapes = new ShapeGraphics();
        shapes.translate(0, 1);
        shapes.scale(1 / width(), -1 / height());
        draw(shapes);
        return shapes.inked();
    }

    /** Drawn with that many pixels on transparent ground, with smooth edges; alpha not multiplied. */
    public BufferedImage pixels(int width, int height) throws IOException {
        if ((long) width * height > MOST_PIXELS) {
            throw new IOException(width + " x " + height);
        }
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        draw(image);
        return image;
    }

    static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
    }
}
