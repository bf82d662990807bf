package bandwright.pipeline.write.sheets.check;

import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.pdf.Points;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Whether a written file of sheets is what was meant: opened again, its pages counted and measured, every picture's box
 * and turn worked out from the page's own operators, and one page drawn and compared with the artwork. It shares no
 * formula with what wrote the file.
 */
public final class SheetsCheck {
    private static final Length BOX_TOLERANCE = Length.mm(0.01);

    /** A page's size stands in the file as a float of points. */
    private static final Length SIZE_TOLERANCE = Length.mm(0.001);

    private final SheetFile meant;
    private final List<String> differences = new ArrayList<>();
    private final Map<COSBase, Transfer> drawings = new HashMap<>();

    private SheetsCheck(SheetFile meant) {
        this.meant = meant;
    }

    /** What is otherwise than meant, one sentence each; empty where nothing is. */
    public static List<String> differences(Path pdf, SheetFile meant) {
        SheetsCheck check = new SheetsCheck(meant);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            check.compare(document);
        } catch (IOException e) {
            String why = e.getMessage();
            check.differences.add(
                    Words.say("sheets.check.unreadable", meant.shortName(), why == null ? e.getClass() : why));
        }
        return List.copyOf(check.differences);
    }

    private void compare(PDDocument document) throws IOException {
        int pages = document.getNumberOfPages();
        if (pages != meant.sheets().size()) {
            say("sheets.check.pages", pages, meant.sheets().size());
            return;
        }
        for (int i = 0; i < pages; i++) {
            compareSize(document.getPage(i).getMediaBox(), i);
            comparePictures(
                    PageWalk.pictures(document.getPage(i), meant.sheets().get(i).room()), i);
        }
        if (differences.isEmpty()) {
            compareDrawn(document);
        }
    }

    private void compareSize(PDRectangle page, int index) {
        Box size = meant.sheets().get(index).room().page();
        Length width = Points.length(page.getWidth());
        Length height = Points.length(page.getHeight());
        if (!near(width, size.width(), SIZE_TOLERANCE) || !near(height, size.height(), SIZE_TOLERANCE)) {
            say(
                    "sheets.check.size",
                    index + 1,
                    width.mm2(),
                    height.mm2(),
                    size.width().mm2(),
                    size.height().mm2());
        }
    }

    private void comparePictures(List<FoundPicture> found, int index) {
        List<FoundPicture> left = new ArrayList<>(found);
        for (Placed placed : meant.sheets().get(index).placed()) {
            Optional<FoundPicture> match = left.stream()
                    .filter(picture -> near(picture.box(), placed.box()))
                    .findFirst();
            if (match.isEmpty()) {
                say("sheets.check.missing", index + 1, placed.unit().id(), words(placed.box()));
                continue;
            }
            FoundPicture picture = match.get();
            left.remove(picture);
            if (!picture.isFlippedAndTurned(placed.rotation())) {
                say("sheets.check.turn", index + 1, placed.unit().id());
            }
            Transfer drawn =
                    drawings.putIfAbsent(picture.drawing(), placed.unit().transfer());
            if (drawn != null && !drawn.equals(placed.unit().transfer())) {
                say("sheets.check.swapped", index + 1, placed.unit().id());
            }
        }
        left.forEach(picture -> say("sheets.check.extra", index + 1, words(picture.box())));
    }

    private void compareDrawn(PDDocument document) throws IOException {
        Optional<Integer> page = PageChoice.find(meant.sheets());
        if (page.isPresent()) {
            Sheet sheet = meant.sheets().get(page.get());
            for (Placed placed : DrawnPage.of(document, page.get(), sheet).unlike()) {
                say("sheets.check.drawn", page.get() + 1, placed.unit().id());
            }
        }
    }

    private static boolean near(Box one, Box other) {
        return near(one.x(), other.x(), BOX_TOLERANCE)
                && near(one.y(), other.y(), BOX_TOLERANCE)
                && near(one.right(), other.right(), BOX_TOLERANCE)
                && near(one.top(), other.top(), BOX_TOLERANCE);
    }

    private static boolean near(Length one, Length other, Length tolerance) {
        Length difference = one.minus(other);
        return !difference.atLeast(difference.negated()).longerThan(tolerance);
    }

    private static String words(Box box) {
        return Words.say(
                "sheets.check.box",
                box.width().mm2(),
                box.height().mm2(),
                box.x().mm2(),
                box.y().mm2());
    }

    private void say(String key, Object... about) {
        Object[] all = new Object[about.length + 1];
        all[0] = meant.shortName();
        System.arraycopy(about, 0, all, 1, about.length);
        differences.add(Words.say(key, all));
    }
}
