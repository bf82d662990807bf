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
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * One page that tells what a printer really does: bars of 200 mm across and along to be measured, ladders at all four
 * edges that show what it can't reach, a line that tells whether it mirrors, and the print settings. On small paper the bars are shorter and the words stand on a second page.
 */
public final class RulerPage {
    private static final int BAR = 200;
    private static final int SHORT_BAR = 100;
    private static final int SHORTEST_BAR = 50;

    /** Narrower than that no words are set beside the bar: they go on a page of their own. */
    private static final double LEAST_MEASURE = 100;

    private static final double WORDS_MARGIN = 8;

    /** The bar across stands under the one along, clear of the ladder. */
    private static final double ABOVE_FOOT = 34;

    /** How far from the edge a ladder goes. */
    private static final int RUNGS = 15;

    private final PaperRoom room;
    private final SetupSheet sheet;
    private final Faces faces;
    private final String command;

    private RulerPage(PaperRoom room, String command, Faces faces) {
        this.room = room;
        this.faces = faces;
        this.command = command;
        this.sheet = SetupSheet.asPrinted(faces, wholePage(room));
    }

    /** The bars' length on a paper: 200 mm, or 100 or 50 where a side has no room for more. */
    public static int barMm(Length side) {
        return side.mm() >= BAR + 10 ? BAR : side.mm() >= SHORT_BAR + 15 ? SHORT_BAR : SHORTEST_BAR;
    }

    /** Writes the page; what was measured is typed in behind that command. */
    public static void write(PaperRoom room, String command, RunId day, OutputStream out) throws IOException {
        String title =
                Words.say("ruler.title", room.printer().id(), room.paper().id());
        try (PDDocument document = PdfFile.create(day, "ruler-" + room.printer().id(), title)) {
            OwnFile.mark(document, OwnFile.Kind.RULER);
            Faces faces = new Faces(document);
            RulerPage page = new RulerPage(room, command, faces);
            for (SetupSheet sheet : page.sheets(title)) {
                document.addPage(sheet.page(document));
            }
            faces.finish();
            PdfFile.save(document, out);
        }
    }

    private static PaperRoom wholePage(PaperRoom room) {
        return new PaperRoom(room.paper(), room.printer(), room.page(), room.page());
    }

    private List<SetupSheet> sheets(String title) {
        double width = sheet.width().mm();
        double height = sheet.height().mm();
        double left = 26;
        double measure = width - left - 62;
        boolean isSmall = measure < LEAST_MEASURE || barMm(room.page().height()) < BAR;
        ladders(width, height);
        bars(width, height, isSmall);
        if (!isSmall) {
            words(sheet, title, left, height - 24, measure);
            return List.of(sheet);
        }
        SetupSheet second = SetupSheet.asPrinted(faces, room);
        words(second, title, WORDS_MARGIN, height - WORDS_MARGIN, width - 2 * WORDS_MARGIN);
        return List.of(sheet, second);
    }

    private void words(SetupSheet page, String title, double left, double top, double measure) {
        double y = page.setBelow(title, Style.HEADING, left, top, measure);
        y = page.setBelow(Words.say("ruler.settings"), Style.BODY, left, y - 2, measure);
        y = page.setBelow(Words.say("ruler.mirror"), Style.STRONG, left, y - 3, measure);
        String mirror = room.printer().mirror() == MirrorBy.DRIVER ? "ruler.mirror-driver" : "ruler.mirror-file";
        y = page.setBelow(Words.say(mirror), Style.BODY, left, y - 1, measure);
        y = page.setBelow(Words.say("ruler.measure"), Style.STRONG, left, y - 3, measure);
        int across = barMm(room.page().width());
        int along = barMm(room.page().height());
        y = page.setBelow(Words.say("ruler.measure-how", across, along, command), Style.BODY, left, y - 1, measure);
        page.setBelow(Words.say("ruler.edges"), Style.BODY, left, y - 3, measure);
    }

    private void bars(double width, double height, boolean isSmall) {
        int across = barMm(room.page().width());
        int along = barMm(room.page().height());
        sheet.bar(across, (width - across) / 2, ABOVE_FOOT, false, Words.say("ruler.bar-across", across));
        double right = width - (isSmall ? 22 : 42);
        double foot = Math.max(ABOVE_FOOT + 14, height - along - 16);
        sheet.bar(along, right, foot, true, Words.say("ruler.bar-along", along));
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
