package bandwright.pipeline.write.setup;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.pdf.PdfFile;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * One page that tells what a printer really does: bars of 200 mm across and along to be measured, ladders at all four
 * edges that show what it can't reach, a line that tells whether it mirrors, and the print settings.
 */
public final class RulerPage {
    private static final int BAR = 200;
    private static final int SHORT_BAR = 100;

    /** The bar across stands under the one along, clear of the ladder. */
    private static final double ABOVE_FOOT = 34;

    /** How far from the edge a ladder goes. */
    private static final int RUNGS = 15;

    private final PaperRoom room;
    private final SetupSheet sheet;

    private RulerPage(PaperRoom room, Faces faces) {
        this.room = room;
        this.sheet = new SetupSheet(faces, wholePage(room), false);
    }

    /** The bars' length on a paper: 200 mm, or 100 where a side has no room for more. */
    public static int barMm(Length side) {
        return side.mm() >= BAR + 10 ? BAR : SHORT_BAR;
    }

    /** Writes the page. */
    public static void write(PaperRoom room, RunId day, OutputStream out) throws IOException {
        String title =
                Words.say("ruler.title", room.printer().id(), room.paper().id());
        try (PDDocument document = PdfFile.create(day, "ruler-" + room.printer().id(), title)) {
            Faces faces = new Faces(document);
            RulerPage page = new RulerPage(room, faces);
            page.draw(title);
            document.addPage(page.sheet.page(document));
            faces.finish();
            PdfFile.save(document, out);
        }
    }

    private static PaperRoom wholePage(PaperRoom room) {
        return new PaperRoom(room.paper(), room.printer(), room.page(), room.page());
    }

    private void draw(String title) {
        double width = sheet.width().mm();
        double height = sheet.height().mm();
        double left = 26;
        double measure = width - left - 62;
        ladders(width, height);
        double y = sheet.setBelow(title, Style.HEADING, left, height - 24, measure);
        y = sheet.setBelow(Words.say("ruler.settings"), Style.BODY, left, y - 2, measure);
        y = sheet.setBelow(Words.say("ruler.mirror"), Style.STRONG, left, y - 3, measure);
        String mirror = room.printer().mirror() == MirrorBy.DRIVER ? "ruler.mirror-driver" : "ruler.mirror-file";
        y = sheet.setBelow(Words.say(mirror), Style.BODY, left, y - 1, measure);
        y = sheet.setBelow(Words.say("ruler.measure"), Style.STRONG, left, y - 3, measure);
        int across = barMm(room.page().width());
        int along = barMm(room.page().height());
        y = sheet.setBelow(
                Words.say("ruler.measure-how", across, along, room.printer().id()), Style.BODY, left, y - 1, measure);
        sheet.setBelow(Words.say("ruler.edges"), Style.BODY, left, y - 3, measure);
        bar(across, (width - across) / 2, ABOVE_FOOT, false);
        bar(along, width - 42, Math.max(ABOVE_FOOT + 14, height - along - 16), true);
    }

    /** From the outer edge of one end line to the outer edge of the other. */
    private void bar(int mm, double x, double y, boolean isUp) {
        double half = SetupSheet.HAIRLINE.mm() / 2;
        sheet.canvas().save();
        if (isUp) {
            sheet.canvas().concat(0, 1, -1, 0, Length.mm(x), Length.mm(y));
        } else {
            sheet.canvas().concat(1, 0, 0, 1, Length.mm(x), Length.mm(y));
        }
        sheet.across(0, mm, 0);
        for (int i = 0; i <= mm; i++) {
            double at = i == 0 ? half : i == mm ? mm - half : i;
            sheet.up(at, 0, i % 100 == 0 ? 7 : i % 10 == 0 ? 4.5 : i % 5 == 0 ? 3 : 1.8);
        }
        sheet.setCentred(Words.say(isUp ? "ruler.bar-along" : "ruler.bar-across", mm), Style.SMALL, mm / 4.0, 8);
        sheet.canvas().restore();
    }

    /** A rung every millimetre from each edge, numbered every second one: the lowest number that shows is the margin. */
    private void ladders(double width, double height) {
        Box page = room.page();
        for (int i = 0; i < RUNGS; i++) {
            double step = 3.2 * i;
            double start = width / 2 - 3.2 * RUNGS / 2 + step;
            sheet.across(start, start + 2.6, i);
            sheet.across(start, start + 2.6, height - i);
            double up = page.height().mm() / 2 - 3.2 * RUNGS / 2 + step;
            sheet.up(i, up, up + 2.6);
            sheet.up(width - i, up, up + 2.6);
            if (i % 2 == 0) {
                String number = String.valueOf(i);
                sheet.setCentred(number, Style.SMALL, start + 1.3, i + 1);
                sheet.setCentred(number, Style.SMALL, start + 1.3, height - i - 3.4);
                sheet.set(number, Style.SMALL, i + 1, up + 0.2);
                sheet.set(number, Style.SMALL, width - i - 4.4, up + 0.2);
            }
        }
    }
}
