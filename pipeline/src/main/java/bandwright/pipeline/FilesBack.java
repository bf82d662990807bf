package bandwright.pipeline;

import bandwright.pipeline.held.HeldFile;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.SheetPage;
import bandwright.pipeline.write.json.RunJson;
import bandwright.pipeline.write.json.RunJsonBack;
import bandwright.pipeline.write.workbook.HeldWorkbook;
import bandwright.pipeline.write.workbook.OrdersBack;
import bandwright.pipeline.write.workbook.OrdersWorkbook;
import bandwright.pipeline.write.workbook.WorkbookBack;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Reads the files of a run back and compares their sums with the records'. */
final class FilesBack {
    private final Run run;
    private final Path folder;
    private final List<RowFate> fates;
    private final List<String> mismatches = new ArrayList<>();

    private FilesBack(Run run, Path folder) {
        this.run = run;
        this.folder = folder;
        this.fates = RowFates.of(run);
    }

    static List<String> compare(Run run, Path folder) throws IOException {
        FilesBack back = new FilesBack(run, folder);
        back.runJson(RunJsonBack.read(folder.resolve(RunJson.FILE)));
        back.orders(OrdersBack.read(folder));
        back.held();
        back.sheets();
        return List.copyOf(back.mismatches);
    }

    private void runJson(RunJsonBack json) {
        same(RunJson.FILE, "run", List.of(run.id().toString()), json.all("run"));
        rows(json);
        units(json);
        List<SheetPage> sheets = SheetFiles.of(run.tiled()).pages();
        same(RunJson.FILE, "sheets.file", sheets.stream().map(SheetPage::file), json.all("sheets.file"));
        same(RunJson.FILE, "sheets.page", sheets.stream().map(SheetPage::page), json.all("sheets.page"));
        same(RunJson.FILE, "loads.load", run.loads().stream().map(Load::number), json.all("loads.load"));
        Stream<String> loaded =
                run.loads().stream().flatMap(load -> load.units().stream()).map(Unit::id);
        same(RunJson.FILE, "loads.units", loaded, json.all("loads.units"));
        Stream<Integer> held = run.held().stream().map(HeldRow::pieces);
        same(RunJson.FILE, "held.pieces", held, json.all("held.pieces"));
        Stream<Integer> skipped = run.skipped().stream().map(SkippedRow::pieces);
        same(RunJson.FILE, "skipped.pieces", skipped, json.all("skipped.pieces"));
    }

    private void rows(RunJsonBack json) {
        RowCounts counts = RowCounts.of(run, fates);
        same(RunJson.FILE, "rows.read", Stream.of(counts.read()), json.all("rows.read"));
        for (RowEnd end : RowEnd.values()) {
            String path = "rows." + end.word();
            same(RunJson.FILE, path, Stream.of(counts.of(end)), json.all(path));
        }
        int ended = counts.made() + counts.part() + counts.held() + counts.skipped() + counts.empty();
        same(RunJson.FILE, "rows", Stream.of(ended), json.all("rows.read"));
    }

    private void units(RunJsonBack json) {
        Map<String, Integer> sheets = new HashMap<>();
        Map<String, Integer> loads = new HashMap<>();
        for (int index = 0; index < run.tiled().sheets().size(); index++) {
            int sheet = index;
            run.tiled().sheets().get(index).placed().forEach(placed -> {
                sheets.put(placed.unit().id(), sheet);
                loads.put(placed.unit().id(), placed.load());
            });
        }
        List<String> ids = run.units().stream().map(Unit::id).toList();
        same(RunJson.FILE, "units.id", ids, json.all("units.id"));
        same(RunJson.FILE, "units.sheet", ids.stream().map(sheets::get), json.all("units.sheet"));
        same(RunJson.FILE, "units.load", ids.stream().map(loads::get), json.all("units.load"));
    }

    private void orders(OrdersBack orders) {
        String file = OrdersWorkbook.FILE;
        Stream<String> outcomes = fates.stream().map(fate -> fate.end().word());
        same(file, "outcome", outcomes, orders.outcomes());
        int pieces = fates.stream().mapToInt(RowFate::ordered).sum();
        same(file, "pieces", List.of(Integer.toString(pieces)), List.of(Integer.toString(orders.pieces())));
        same(file, "unit ids", fates.stream().map(OrdersBack::unitsCell), orders.units());
    }

    private void held() throws IOException {
        Path file = folder.resolve(HeldWorkbook.FILE);
        long wanted = fates.stream().filter(fate -> !fate.held().isEmpty()).count();
        long found = 0;
        if (Files.exists(file)) {
            for (List<WorkbookBack.Row> rows : WorkbookBack.read(file).sheets()) {
                // The sheet of choices has no such header and holds no row.
                found += HeldFile.has(rows.get(0).cells()) ? rows.size() - 1 : 0;
            }
        }
        same(HeldWorkbook.FILE, "rows", List.of(Long.toString(wanted)), List.of(Long.toString(found)));
    }

    /** Their pages are counted by whoever opens them; here only that none is missing or too many. */
    private void sheets() throws IOException {
        List<String> wanted = SheetFiles.of(run.tiled()).files().stream()
                .map(SheetFile::name)
                .sorted()
                .toList();
        List<String> found = new ArrayList<>();
        Path sheets = folder.resolve("sheets");
        if (Files.isDirectory(sheets)) {
            try (Stream<Path> files = Files.list(sheets)) {
                files.map(file -> "sheets/" + file.getFileName()).sorted().forEach(found::add);
            }
        }
        same("sheets", "files", wanted, found);
    }

    private void same(String file, String what, Stream<?> wanted, List<String> found) {
        same(file, what, wanted.map(String::valueOf).toList(), found);
    }

    /** Says the first place where they differ. */
    private void same(String file, String what, List<String> wanted, List<String> found) {
        if (wanted.equals(found)) {
            return;
        }
        int at = 0;
        while (at < wanted.size() && at < found.size() && wanted.get(at).equals(found.get(at))) {
            at++;
        }
        mismatches.add(Words.say(
                "conservation.file",
                file,
                what,
                at + 1,
                at < wanted.size() ? wanted.get(at) : "-",
                at < found.size() ? found.get(at) : "-"));
    }
}
