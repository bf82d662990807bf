package bandwright.pipeline.write.pdf;

import bandwright.pipeline.type.Outline;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;

/**
 * What is drawn on a page or in a form: lengths in, content operators (ISO 32000-1, annex A) in points out, rounded to
 * 1/1000 pt so that no machine's last digit shows.
 *
 * <p>{@code canvas.fill(box)} of a box 25.4 mm wide and high at the origin writes {@code 0 0 72 72 re f}.
 */
public final class Canvas {
    private static final COSName INK_SPACE = COSName.getPDFName("Ink");
    private static final int POINT_DECIMALS = 3;
    private static final int FACTOR_DECIMALS = 8;

    private final StringBuilder out = new StringBuilder(1024);
    private final PDResources resources = new PDResources();

    public Canvas save() {
        return operator("q");
    }

    public Canvas restore() {
        return operator("Q");
    }

    /** Maps what is drawn from here on: x' = a x + c y + e, y' = b x + d y + f. */
    public Canvas concat(double a, double b, double c, double d, Length e, Length f) {
        return factor(a).factor(b).factor(c).factor(d).length(e).length(f).operator("cm");
    }

    /** The same, of a map in millimetres. */
    public Canvas concat(AffineTransform map) {
        return concat(
                map.getScaleX(),
                map.getShearY(),
                map.getShearX(),
                map.getScaleY(),
                Length.mm(map.getTranslateX()),
                Length.mm(map.getTranslateY()));
    }

    /** Moves the origin to the box's lower-left corner and takes its size as the unit square, as a picture wants it. */
    public Canvas stretchTo(Box box) {
        return length(box.width())
                .number("0 0")
                .length(box.height())
                .length(box.x())
                .length(box.y())
                .operator("cm");
    }

    /** Maps by bare factors, such as the quarter turns of the unit square. */
    public Canvas concatUnits(AffineTransform map) {
        if (map.isIdentity()) {
            return this;
        }
        return factor(map.getScaleX())
                .factor(map.getShearY())
                .factor(map.getShearX())
                .factor(map.getScaleY())
                .factor(map.getTranslateX())
                .factor(map.getTranslateY())
                .operator("cm");
    }

    /** Fills with that colour from here on. */
    public Canvas ink(Ink ink) {
        COSDictionary spaces = new COSDictionary();
        spaces.setItem(INK_SPACE, ink.space());
        resources.getCOSObject().setItem(COSName.COLORSPACE, spaces);
        out.append('/').append(INK_SPACE.getName());
        operator(" cs");
        ByteBuffer parts = ink.parts().duplicate();
        while (parts.hasRemaining()) {
            channel(parts.get() & 0xFF);
        }
        return operator("sc");
    }

    /** What is inked from here on covers what lies under it by that share. */
    public Canvas opacity(double share) {
        PDExtendedGraphicsState state = new PDExtendedGraphicsState();
        state.setNonStrokingAlphaConstant(Math.round(share * 1000) / 1000f);
        String name = "Opacity" + Math.round(share * 1000);
        resources.put(COSName.getPDFName(name), state);
        out.append('/').append(name);
        return operator(" gs");
    }

    /** Ink of that darkness, 0 white to 1 black, for type and lines. */
    public Canvas black(double darkness) {
        return factor(1 - darkness).operator("g");
    }

    /** Lines of that darkness, 0 white to 1 black. */
    public Canvas line(double darkness) {
        return factor(1 - darkness).operator("G");
    }

    public Canvas fill(Box box) {
        return rectangle(box).operator("f");
    }

    /** Letters, filled where their outline winds. */
    public Canvas fill(Outline letters) {
        return path(letters).operator("f");
    }

    /** A shape, filled where its outline winds an odd number of times. */
    public Canvas fillEvenOdd(Outline shape) {
        return path(shape).operator("f*");
    }

    /** A line of that width along an outline. */
    public Canvas stroke(Outline outline, Length width) {
        return length(width).operator("w").path(outline).operator("S");
    }

    /** Nothing outside that outline is drawn from here on. */
    public Canvas clip(Outline outline) {
        return path(outline).operator("W n");
    }

    private Canvas path(Outline letters) {
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator path = letters.path().getPathIterator(null); !path.isDone(); path.next()) {
            switch (path.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> mm(p[0]).mm(p[1]).operator("m");
                case PathIterator.SEG_LINETO -> mm(p[0]).mm(p[1]).operator("l");
                case PathIterator.SEG_QUADTO -> {
                    // A quadratic curve's control point stands at two thirds from either end (degree elevation).
                    mm(x + (p[0] - x) * 2 / 3).mm(y + (p[1] - y) * 2 / 3);
                    mm(p[2] + (p[0] - p[2]) * 2 / 3).mm(p[3] + (p[1] - p[3]) * 2 / 3);
                    mm(p[2]).mm(p[3]).operator("c");
                    p[0] = p[2];
                    p[1] = p[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    mm(p[0]).mm(p[1]).mm(p[2]).mm(p[3]).mm(p[4]).mm(p[5]).operator("c");
                    p[0] = p[4];
                    p[1] = p[5];
                }
                default -> operator("h");
            }
            x = p[0];
            y = p[1];
        }
        return this;
    }

    private Canvas mm(double mm) {
        return length(Length.mm(mm));
    }

    public Canvas clip(Box box) {
        return rectangle(box).operator("W n");
    }

    private Canvas rectangle(Box box) {
        return length(box.x())
                .length(box.y())
                .length(box.width())
                .length(box.height())
                .operator("re");
    }

    /** Draws a form or picture, whose name on this canvas is the given one. */
    public Canvas draw(String name, PDXObject object) {
        resources.put(COSName.getPDFName(name), object);
        out.append('/').append(name).append(" Do\n");
        return this;
    }

    /** Sets words in an embedded font; their baseline begins at (x, y). */
    public Canvas text(EmbeddedFont font, String words, Length size, Length x, Length y) {
        if (words.isEmpty()) {
            return this;
        }
        resources.put(COSName.getPDFName(font.name()), font.embedded());
        out.append("BT /").append(font.name()).append(' ');
        length(size).number("Tf").length(x).length(y).number("Td");
        out.append('<').append(font.codes(words)).append("> Tj ET\n");
        return this;
    }

    /** A rectangle of whole units, part of the path that {@link #fillPath} fills. */
    Canvas unitRectangle(int x, int y, int width, int height) {
        out.append(x)
                .append(' ')
                .append(y)
                .append(' ')
                .append(width)
                .append(' ')
                .append(height);
        return operator(" re");
    }

    Canvas fillPath() {
        return operator("f");
    }

    /** Goes over to a system in which one unit is {@code unit} long, with its origin at (x, y). */
    Canvas unitsAt(double unitsAcross, Length across, Length x, Length y) {
        double unit = Points.of(across) / unitsAcross;
        return factor(unit).number("0 0").factor(unit).length(x).length(y).operator("cm");
    }

    /** Steps to the right by whole units. */
    Canvas stepRight(int units) {
        out.append("1 0 0 1 ").append(units);
        return operator(" 0 cm");
    }

    /** Operators that are ready made, in the units that hold here. */
    Canvas operators(String ready) {
        out.append(ready);
        return this;
    }

    /** This drawing as a form that may be drawn many times. */
    public PDFormXObject form(PDDocument document, Box box) {
        return form(
                document,
                new PDRectangle(
                        (float) Points.of(box.x()), (float) Points.of(box.y()),
                        (float) Points.of(box.width()), (float) Points.of(box.height())));
    }

    PDFormXObject form(PDDocument document, PDRectangle box) {
        PDFormXObject form = new PDFormXObject(document);
        form.setBBox(box);
        form.setResources(resources);
        write(form.getContentStream());
        return form;
    }

    /** This drawing as a page of that size. */
    public PDPage page(PDDocument document, Length width, Length height) {
        PDPage page = new PDPage(new PDRectangle((float) Points.of(width), (float) Points.of(height)));
        page.setResources(resources);
        PDStream content = new PDStream(document);
        write(content);
        page.setContents(content);
        return page;
    }

    private void write(PDStream stream) {
        try {
            Operators.store(out.toString(), stream.getCOSObject());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Canvas operator(String name) {
        out.append(name).append('\n');
        return this;
    }

    private Canvas number(String ready) {
        out.append(ready).append(' ');
        return this;
    }

    private Canvas length(Length length) {
        Decimals.append(out, Points.of(length), POINT_DECIMALS);
        out.append(' ');
        return this;
    }

    private Canvas factor(double factor) {
        Decimals.append(out, factor, FACTOR_DECIMALS);
        out.append(' ');
        return this;
    }

    private Canvas channel(int of255) {
        Decimals.append(out, of255 / 255.0, POINT_DECIMALS + 1);
        out.append(' ');
        return this;
    }
}
