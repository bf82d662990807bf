package bandwright.pipeline.write;

import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.tile.Tiled;
import bandwright.rules.paper.PaperRoom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Which file and page each sheet of a run is: one file for each printer and paper, 1,000 pages at most, numbered for
 * each paper over the whole run. Two printers on letter paper give sheets/letter-01.pdf and sheets/letter-02.pdf.
 */
public final class SheetFiles {
    /** A new file stores its pictures anew, so splitting early multiplies bytes; viewers get slow far beyond this. */
    static final int MOST_PAGES = 1_000;

    private final Map<String, Integer> filesOfPaper = new HashMap<>();
    private final Map<List<String>, SheetFile> lastOfPrinter = new HashMap<>();

    private SheetFiles() {}

    /** One for each sheet, in the order of the sheets: the order of {@code sheets} in run.json. */
    public static List<SheetFile> of(Tiled tiled) {
        SheetFiles files = new SheetFiles();
        List<SheetFile> all = new ArrayList<>();
        for (Sheet sheet : tiled.sheets()) {
            all.add(files.next(sheet));
        }
        return List.copyOf(all);
    }

    private SheetFile next(Sheet sheet) {
        PaperRoom room = sheet.room();
        List<String> job = List.of(room.printer().id(), room.paper().id());
        SheetFile last = lastOfPrinter.get(job);
        SheetFile next = last != null && last.page() < MOST_PAGES
                ? new SheetFile(last.file(), last.page() + 1, sheet)
                : new SheetFile(newFile(room.paper().id()), 1, sheet);
        lastOfPrinter.put(job, next);
        return next;
    }

    /** Paper ids are the shop's own words: what a file's name can't hold becomes _, and names that meet share a count. */
    private String newFile(String paper) {
        String name = paper.replaceAll("[^A-Za-z0-9._-]", "_");
        int number = filesOfPaper.merge(name.toLowerCase(Locale.ROOT), 1, Integer::sum);
        return String.format(Locale.ROOT, "sheets/%s-%02d.pdf", name, number);
    }
}
