package bandwright.pipeline.write.setup;

import bandwright.pipeline.type.Outline;
import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.pdf.Canvas;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * One page of plain paper to measure with, never mirrored, in millimetres from the lower-left corner of the inside, which
 * may lie along the page or, turned, up it. A ruler is drawn at scale 1 whatever the printer's row says; a strip larger by
 * what the printer prints too small, so that it lies true on the paper.
 */
final class SetupSheet {
    /** Fine enough to cut along, strong enough for any printer. */
    static final Length HAIRLINE = Length.mm(0.2);

    private final Canvas canvas = new Canvas();
    private final Faces faces;
    private final PaperRoom room;
    private final boolean isTurned;

    private SetupSheet(Faces faces, PaperRoom room, boolean isTurned, double across, double up) {
        this.faces = faces;
        this.room = room;
        this.isTurned = isTurned;
        Box inside = room.inside();
        if (across != 1 || up != 1) {
            canvas.concat(across, 0, 0, up, Length.ZERO, Length.ZERO);
        }
        if (isTurned) {
            canvas.concat(0, 1, -1, 0, inside.right(), inside.y());
        } else {
            canvas.concat(1, 0, 0, 1, inside.x(), inside.y());
        }
        canvas.black(1);
    }

    /** A page drawn at scale 1, which shows what the printer does to it. */
    static SetupSheet asPrinted(Faces faces, PaperRoom room) {
        return new SetupSheet(faces, room, false, 1, 1);
    }

    /** A page that measures true once it is printed. */
    static SetupSheet trueSize(Faces faces, PaperRoom room, boolean isTurned) {
        Printer printer = room.printer();
        return new SetupSheet(faces, room, isTurned, 1 / printer.scaleX(), 1 / printer.scaleY());
    }

    /** The room of a page that no driver flips. */
    static PaperRoom notMirrored(PaperRoom room) {
        Printer own = room.printer();
        return PaperRoom.of(
                room.paper(),
                new Printer(
                        own.id(),
                        own.papers(),
                        own.queue(),
                        MirrorBy.FILE,
                        own.profile(),
                        own.inkCost(),
                        own.scaleX(),
                        own.scaleY(),
                        own.note()));
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

    /** Where running text under y would end. */
    double below(String text, Style style, double yMm, double widthMm) {
        int lines = faces.lines(Text.of(text, style), Length.mm(widthMm)).size();
        return yMm - lines * style.leading().mm();
    }

    /** A bar to be measured, from the outer edge of one end line to the outer edge of the other. */
    void bar(int mm, double x, double y, boolean isUp, String caption) {
        double half = HAIRLINE.mm() / 2;
        canvas.save();
        if (isUp) {
            canvas.concat(0, 1, -1, 0, Length.mm(x), Length.mm(y));
        } else {
            canvas.concat(1, 0, 0, 1, Length.mm(x), Length.mm(y));
        }
        across(0, mm, 0);
        for (int i = 0; i <= mm; i++) {
            double at = i == 0 ? half : i == mm ? mm - half : i;
            up(at, 0, i % 100 == 0 ? 7 : i % 10 == 0 ? 4.5 : i % 5 == 0 ? 3 : 1.8);
        }
        set(caption, Style.SMALL, 2, 8);
        canvas.restore();
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
