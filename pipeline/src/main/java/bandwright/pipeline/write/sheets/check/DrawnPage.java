package bandwright.pipeline.write.sheets.check;

import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.rules.blanks.Sector;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page as a PDF reader draws it, beside the same page drawn from the artwork files without any PDF. */
final class DrawnPage {
    /** Pixels a millimetre of both drawings: about 144 to the inch. */
    private static final double DENSITY = 5.6;

    /** Of one drawing: a page of a roll gets fewer pixels a millimetre, or two would not fit into a small machine. [J] */
    private static final double MOST_PIXELS = 16_000_000;

    private static final double MM_PER_INCH = 25.4;

    private final Sheet sheet;
    private final BufferedImage drawn;
    private final double density;
    private final AffineTransform paperToPixels;

    private DrawnPage(Sheet sheet, BufferedImage drawn) {
        this.sheet = sheet;
        this.drawn = drawn;
        this.density = density(sheet);
        this.paperToPixels = paperToPixels(sheet.room(), density);
    }

    private static double density(Sheet sheet) {
        Box page = sheet.room().page();
        return Math.min(
                DENSITY,
                Math.sqrt(MOST_PIXELS / (page.width().mm() * page.height().mm())));
    }

    static DrawnPage of(PDDocument document, int page, Sheet sheet) throws IOException {
        float dotsPerInch = (float) (density(sheet) * MM_PER_INCH);
        PDFRenderer renderer = new PDFRenderer(document);
        // Single pixels are taken, not averaged: many times quicker, and cells of 64 of them are compared.
        renderer.setSubsamplingAllowed(true);
        renderer.setRenderingHints(new RenderingHints(
                RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR));
        return new DrawnPage(sheet, renderer.renderImageWithDPI(page, dotsPerInch, ImageType.RGB));
    }

    /** Those whose picture does not look like its artwork, placed as meant. */
    List<Placed> unlike() throws IOException {
        BufferedImage expected = new BufferedImage(drawn.getWidth(), drawn.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = expected.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, expected.getWidth(), expected.getHeight());
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        Artworks artworks = new Artworks(density);
        List<Placed> comparable = new ArrayList<>();
        for (Placed placed : sheet.placed()) {
            AffineTransform upright = new AffineTransform(paperToPixels);
            upright.concatenate(uprightToPaper(placed));
            g.setTransform(upright);
            if (draw(g, placed, artworks)) {
                comparable.add(placed);
            }
        }
        g.dispose();
        return comparable.stream()
                .filter(placed -> !likeness(placed, expected).isAlike())
                .toList();
    }

    /** Of a cone's picture only the sector counts: labels and ticks may stand in the hollows of its box. */
    private Likeness likeness(Placed placed, BufferedImage expected) {
        Rectangle box = pixels(placed.box());
        Optional<Sector> sector = placed.unit().transfer().sector();
        if (sector.isEmpty() || box.isEmpty()) {
            return Likeness.of(drawn, expected, box, pixel(placed));
        }
        AffineTransform toPixels = new AffineTransform(paperToPixels);
        toPixels.concatenate(uprightToPaper(placed));
        Shape shape =
                toPixels.createTransformedShape(BentTransfer.shape(placed.unit().transfer(), sector.get()));
        BufferedImage one = only(drawn, box, shape);
        BufferedImage other = only(expected, box, shape);
        return Likeness.of(one, other, new Rectangle(box.width, box.height), pixel(placed));
    }

    /** How large the largest pixel of its pictures is drawn; shapes have none to speak of. */
    private double pixel(Placed placed) {
        return placed.unit().transfer().layers().stream()
                .filter(Layer.Picture.class::isInstance)
                .map(Layer.Picture.class::cast)
                .filter(picture -> !picture.artwork().kind().isVector())
                .mapToDouble(picture -> density
                        * Math.max(
                                picture.place().width().mm() / picture.artwork().shownWidth(),
                                picture.place().height().mm()
                                        / picture.artwork().shownHeight()))
                .max()
                .orElse(0);
    }

    /** A part of a page, white where the shape isn't. */
    private static BufferedImage only(BufferedImage page, Rectangle box, Shape shape) {
        BufferedImage part = new BufferedImage(box.width, box.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = part.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, box.width, box.height);
        g.translate(-box.x, -box.y);
        g.clip(shape);
        g.drawImage(page, 0, 0, null);
        g.dispose();
        return part;
    }

    private boolean draw(Graphics2D g, Placed placed, Artworks artworks) throws IOException {
        Transfer transfer = placed.unit().transfer();
        return transfer.sector().isPresent()
                ? BentTransfer.draw(g, transfer, transfer.sector().get(), artworks, density)
                : ExpectedTransfer.draw(g, transfer, artworks);
    }

    /** Flipped about its own middle, turned counter-clockwise about it, and brought to the middle of its place. */
    private static AffineTransform uprightToPaper(Placed placed) {
        Box box = placed.box();
        Box upright = placed.unit().transfer().box();
        AffineTransform to = AffineTransform.getTranslateInstance(
                box.x().mm() + box.width().mm() / 2, box.y().mm() + box.height().mm() / 2);
        to.rotate(Math.toRadians(placed.rotation().degrees()));
        to.scale(-1, 1);
        to.translate(-upright.width().mm() / 2, -upright.height().mm() / 2);
        return to;
    }

    /** From the printed paper's millimetres to the file page's pixels: what the printer does, undone. */
    private static AffineTransform paperToPixels(PaperRoom room, double density) {
        AffineTransform to = new AffineTransform();
        to.translate(0, room.page().height().mm() * density);
        to.scale(density, -density);
        to.scale(1 / room.printer().scaleX(), 1 / room.printer().scaleY());
        if (room.printer().mirror() == MirrorBy.DRIVER) {
            to.translate(room.page().width().mm(), 0);
            to.scale(-1, 1);
        }
        return to;
    }

    private Rectangle pixels(Box box) {
        Rectangle2D exact = paperToPixels
                .createTransformedShape(new Rectangle2D.Double(
                        box.x().mm(),
                        box.y().mm(),
                        box.width().mm(),
                        box.height().mm()))
                .getBounds2D();
        int left = (int) Math.ceil(exact.getMinX());
        int top = (int) Math.ceil(exact.getMinY());
        int right = (int) Math.floor(exact.getMaxX());
        int bottom = (int) Math.floor(exact.getMaxY());
        return new Rectangle(left, top, right - left, bottom - top)
                .intersection(new Rectangle(drawn.getWidth(), drawn.getHeight()));
    }
}
