package bandwright.pipeline.write;

import bandwright.pipeline.rows.PlainName;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.tile.Tiled;
import bandwright.rules.paper.PaperRoom;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which file and page every sheet of a run is: one file per printer and paper, numbered per paper, 1,000 pages at most.
 * The first 1,000 letter sheets are {@code sheets/letter-01.pdf}, the next {@code sheets/letter-02.pdf}.
 *
 * @param pages for every sheet, in the order of the run's sheets
 */
public record SheetFiles(List<SheetFile> files, List<SheetPage> pages) {
    private static final int MOST_PAGES = 1000;

    public SheetFiles {
        files = List.copyOf(files);
        pages = List.copyOf(pages);
    }

    public static SheetFiles of(Tiled tiled) {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < tiled.sheets().size(); i++) {
            PaperRoom room = tiled.sheets().get(i).room();
            String key = room.printer().id() + "\n" + room.paper().id();
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(i);
        }
        List<SheetFile> files = new ArrayList<>();
        SheetPage[] pages = new SheetPage[tiled.sheets().size()];
        Map<String, Integer> numbers = new TreeMap<>();
        for (List<Integer> group : groups.values()) {
            for (int from = 0; from < group.size(); from += MOST_PAGES) {
                List<Integer> part = group.subList(from, Math.min(group.size(), from + MOST_PAGES));
                files.add(file(tiled, part, numbers));
                for (int i = 0; i < part.size(); i++) {
                    int sheet = part.get(i);
                    pages[sheet] = new SheetPage(
                            files.get(files.size() - 1).name(),
                            i + 1,
                            tiled.sheets().get(sheet));
                }
            }
        }
        return new SheetFiles(files, List.of(pages));
    }

    private static SheetFile file(Tiled tiled, List<Integer> part, Map<String, Integer> numbers) {
        List<Sheet> sheets = part.stream().map(tiled.sheets()::get).toList();
        String paper = PlainName.file(sheets.get(0).room().paper().id());
        // Some systems take A4-01.pdf and a4-01.pdf for one file.
        int number = numbers.merge(paper.toLowerCase(Locale.ROOT), 1, Integer::sum);
        return new SheetFile("sheets/" + paper + "-" + (number < 10 ? "0" : "") + number + ".pdf", sheets);
    }
}
