package bandwright.pipeline.write.setup;

import bandwright.pipeline.type.Outline;
import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.pdf.Canvas;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * One page of plain paper to measure with: drawn at scale 1 whatever the printer's row says, never mirrored, in
 * millimetres from the lower-left corner of the inside, which may lie along the page or, turned, up it.
 */
final class SetupSheet {
    /** Fine enough to cut along, strong enough for any printer. */
    static final Length HAIRLINE = Length.mm(0.2);

    private final Canvas canvas = new Canvas();
    private final Faces faces;
    private final PaperRoom room;
    private final boolean isTurned;

    SetupSheet(Faces faces, PaperRoom room, boolean isTurned) {
        this.faces = faces;
        this.room = room;
        this.isTurned = isTurned;
        Box inside = room.inside();
        if (isTurned) {
            canvas.concat(0, 1, -1, 0, inside.right(), inside.y());
        } else {
            canvas.concat(1, 0, 0, 1, inside.x(), inside.y());
        }
        canvas.black(1);
    }

    Length width() {
        return isTurned ? room.inside().height() : room.inside().width();
    }

    Length height() {
        return isTurned ? room.inside().width() : room.inside().height();
    }

    Canvas canvas() {
        return canvas;
    }

    /** Sets one line whose baseline begins at (x, y). */
    void set(String text, Style style, double xMm, double yMm) {
        faces.set(canvas, text, style, Length.mm(xMm), Length.mm(yMm));
        canvas.black(1);
    }

    /** Sets one line whose middle stands at x. */
    void setCentred(String text, Style style, double xMm, double yMm) {
        set(text, style, xMm - faces.width(text, style).mm() / 2, yMm);
    }

    /** Sets running text under y and returns where it ends. */
    double setBelow(String text, Style style, double xMm, double yMm, double widthMm) {
        double y = yMm;
        for (String line : faces.lines(Text.of(text, style), Length.mm(widthMm))) {
            y -= style.leading().mm();
            set(line, style, xMm, y);
        }
        return y;
    }

    /** A line across, its middle at y. */
    void across(double fromMm, double toMm, double yMm) {
        fill(fromMm, yMm - HAIRLINE.mm() / 2, toMm - fromMm, HAIRLINE.mm());
    }

    /** A line up, its middle at x. */
    void up(double xMm, double fromMm, double toMm) {
        fill(xMm - HAIRLINE.mm() / 2, fromMm, HAIRLINE.mm(), toMm - fromMm);
    }

    void fill(double x, double y, double width, double height) {
        canvas.fill(new Box(Length.mm(x), Length.mm(y), Length.mm(width), Length.mm(height)));
    }

    /** A hairline along an outline. */
    void stroke(Outline outline) {
        canvas.stroke(outline, HAIRLINE);
    }

    /** The page; a viewer shows a turned one upright. */
    PDPage page(PDDocument document) {
        PDPage page = canvas.page(document, room.page().width(), room.page().height());
        if (isTurned) {
            page.setRotation(90);
        }
        return page;
    }
}
