package bandwright.pipeline.write.sheets;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Every shape that a page fills, in millimetres from its lower left corner, read from its operators. */
final class FilledShapes extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;

    private final List<Filled> shapes = new ArrayList<>();
    private Path2D path = new Path2D.Double();

    /** A shape and its colour as the file writes it, red, green and blue in thousandths. */
    record Filled(Shape shape, int red, int green, int blue) {}

    private FilledShapes(PDPage page) {
        super(page);
    }

    static List<Filled> of(Path pdf, int page) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            FilledShapes shapes = new FilledShapes(document.getPage(page));
            shapes.processPage(document.getPage(page));
            return List.copyOf(shapes.shapes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Shape only(Path pdf, int red, int green, int blue) {
        List<Filled> alike = of(pdf, 0).stream()
                .filter(shape -> shape.red == red && shape.green == green && shape.blue == blue)
                .toList();
        if (alike.size() != 1) {
            throw new AssertionError(alike.size() + " shapes of that colour in " + of(pdf, 0));
        }
        return alike.get(0).shape;
    }

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
        path.moveTo(a.getX(), a.getY());
        path.lineTo(b.getX(), b.getY());
        path.lineTo(c.getX(), c.getY());
        path.lineTo(d.getX(), d.getY());
        path.closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path = new Path2D.Double();
    }

    @Override
    public void fillPath(int rule) throws IOException {
        float[] parts = getGraphicsState().getNonStrokingColor().getComponents();
        Shape inMm = AffineTransform.getScaleInstance(MM, MM).createTransformedShape(path);
        boolean isGrey = parts.length == 1;
        shapes.add(new Filled(
                inMm,
                Math.round(1000 * parts[0]),
                Math.round(1000 * parts[isGrey ? 0 : 1]),
                Math.round(1000 * parts[isGrey ? 0 : 2])));
        endPath();
    }

    @Override
    public void fillAndStrokePath(int rule) throws IOException {
        fillPath(rule);
    }

    @Override
    public void strokePath() {
        endPath();
    }

    @Override
    public void clip(int rule) {
        // only what is filled counts
    }

    @Override
    public void drawImage(PDImage image) {
        // only what is filled counts
    }

    @Override
    public void shadingFill(COSName name) {
        // only what is filled counts
    }
}
