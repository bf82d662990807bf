package bandwright.pipeline.write.setup;

import bandwright.pipeline.type.Captions;
import bandwright.pipeline.type.Outline;
import bandwright.pipeline.write.pdf.Points;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * One block of swatches, in millimetres from its lower-left corner: which try it is, solid black and colours, greys and
 * tints, fine lines and small type, black on white and white on black. Pressed too little, solids stay pale or patchy;
 * pressed too much, lines and letters run and black turns brown. [CP] Which try it is stands in the picture on purpose: it
 * is all that tells pressed pieces apart, and its letters are swatches themselves.
 */
final class Swatches {
    static final double WIDTH = 64;
    static final double HEIGHT = 50;

    private static final Rgb BLACK = new Rgb(0, 0, 0);

    /** Cyan, magenta, yellow, and two of them each: about what four inks make of them; from memory. */
    private static final List<Rgb> SOLIDS = List.of(
            BLACK,
            new Rgb(0, 158, 224),
            new Rgb(226, 0, 122),
            new Rgb(255, 237, 0),
            new Rgb(226, 0, 26),
            new Rgb(0, 150, 64),
            new Rgb(49, 39, 131));

    /** Four greys, then the first three colours at a third. */
    private static final List<Rgb> TINTS = List.of(
            new Rgb(64, 64, 64),
            new Rgb(128, 128, 128),
            new Rgb(191, 191, 191),
            new Rgb(230, 230, 230),
            new Rgb(170, 221, 245),
            new Rgb(245, 170, 210),
            new Rgb(255, 249, 170));

    /** The first patch of a row is a little wider than the others. */
    private static final double FIRST = 10;

    private static final double PATCH = 8;
    private static final double APART = 1;

    private static final List<Double> LINES = List.of(0.1, 0.2, 0.3, 0.5);
    private static final List<Double> TYPE_POINTS = List.of(8.0, 6.0, 4.0);

    private static final double DETAIL = 20;
    private static final double DETAIL_HEIGHT = 14;

    private final List<Inked> shapes = new ArrayList<>();
    private final double left;
    private final double scale;
    private final Captions captions;

    /** A shape of one colour; white is no ink on what lies under it. */
    record Inked(Outline outline, Rgb colour) {}

    /**
     * What a try is called on its piece.
     *
     * @param number large
     * @param lines beside it, small
     */
    record Name(String number, List<String> lines) {
        Name {
            lines = List.copyOf(lines);
        }
    }

    private Swatches(double left, double scale, Captions captions) {
        this.left = left;
        this.scale = scale;
        this.captions = captions;
    }

    /** The block that begins so far from the strip's left end. */
    static List<Inked> of(double left, double scale, Name name, Captions captions) {
        Swatches swatches = new Swatches(left, scale, captions);
        swatches.name(name);
        swatches.patches(SOLIDS, 27, 13);
        swatches.patches(TINTS, 16, 9);
        swatches.lines(0, BLACK);
        swatches.box(DETAIL + 2, 0, DETAIL, DETAIL_HEIGHT, BLACK);
        swatches.lines(DETAIL + 2, Rgb.WHITE);
        swatches.type(2 * DETAIL + 4);
        return swatches.shapes;
    }

    private void name(Name name) {
        Shape number = captions.line(name.number(), true, 9.5);
        text(number, 0, 42.6, BLACK);
        double from = number.getBounds2D().getWidth() + 3;
        double y = 47.4;
        for (String line : name.lines()) {
            Shape letters = captions.line(line, false, 3.2);
            double wide = letters.getBounds2D().getMaxX();
            double fits = Math.min(1, (WIDTH - from) / Math.max(wide, 1e-9));
            text(AffineTransform.getScaleInstance(fits, fits).createTransformedShape(letters), from, y, BLACK);
            y -= 4.6;
        }
    }

    private void patches(List<Rgb> colours, double y, double height) {
        double x = 0;
        for (Rgb colour : colours) {
            double wide = x == 0 ? FIRST : PATCH;
            box(x, y, wide, height, colour);
            x += wide + APART;
        }
    }

    /** Four lines across and four up; they keep their widths in a smaller block. */
    private void lines(double x, Rgb colour) {
        for (int i = 0; i < LINES.size(); i++) {
            double thick = LINES.get(i) / scale;
            double at = 2.5 + i * 3;
            box(x + 1, at - thick / 2, 8, thick, colour);
            box(x + 9.5 + i * 2.6 - thick / 2 + 1.2, 1.5, thick, 11, colour);
        }
    }

    /** Each size in black, and in white on black. */
    private void type(double x) {
        box(x, 0, DETAIL, DETAIL_HEIGHT / 2, BLACK);
        double y = 0;
        for (double points : TYPE_POINTS) {
            double size = Points.length(points).mm();
            String words = words(points * scale);
            y -= 0.75 * size;
            Shape letters = captions.line(words, false, size);
            text(letters, x + 1, DETAIL_HEIGHT + y, BLACK);
            text(letters, x + 1, DETAIL_HEIGHT / 2 - 0.6 + y, Rgb.WHITE);
            y -= 0.5;
        }
    }

    private static String words(double points) {
        BigDecimal plain =
                BigDecimal.valueOf(points).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return plain.toPlainString() + " pt aegmnos";
    }

    private void box(double x, double y, double width, double height, Rgb colour) {
        Box box = new Box(
                Length.mm(left + x * scale), Length.mm(y * scale), Length.mm(width * scale), Length.mm(height * scale));
        shapes.add(new Inked(Outline.of(box), colour));
    }

    /** Letters whose y grows downwards. */
    private void text(Shape letters, double x, double y, Rgb colour) {
        AffineTransform map = new AffineTransform(scale, 0, 0, -scale, left + x * scale, y * scale);
        shapes.add(new Inked(Outline.of(letters, map), colour));
    }
}
