package bandwright.pipeline.write.workbook;

import bandwright.pipeline.RowFate;
import bandwright.pipeline.RowFates;
import bandwright.pipeline.Run;
import bandwright.pipeline.held.HeldFile;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.rules.Rulebook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.Workbook;

/**
 * held.xlsx: the held rows as they came, a sheet for each of their own, each with the reason, the cure and where it is
 * from. Mended there and dropped into the inbox again, it is the whole repair. Absent when nothing is held.
 */
public final class HeldWorkbook implements Output {
    public static final String FILE = "held.xlsx";

    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        if (run.held().isEmpty()) {
            return List.of();
        }
        return List.of(
                new OutFile(FILE, out -> WorkbookFile.write(out, run.id().date(), book -> fill(book, run, rules))));
    }

    private static void fill(Workbook book, Run run, Rulebook rules) {
        SheetNames names = new SheetNames(HeldFile.CHOICES);
        Choices choices = new Choices(rules);
        for (List<RowFate> rows : bySheet(run).values()) {
            From from = rows.get(0).row().from();
            String name = from.sheet().orElseGet(() -> withoutEnding(from.file()));
            HeldSheet.write(book.newWorksheet(names.next(name)), rows, choices);
        }
        choices.finish(book);
    }

    private static Map<List<String>, List<RowFate>> bySheet(Run run) {
        Map<List<String>, List<RowFate>> sheets = new LinkedHashMap<>();
        for (RowFate fate : RowFates.of(run)) {
            if (!fate.held().isEmpty()) {
                From from = fate.row().from();
                sheets.computeIfAbsent(List.of(from.file(), from.sheet().orElse("")), key -> new ArrayList<>())
                        .add(fate);
            }
        }
        return sheets;
    }

    private static String withoutEnding(String file) {
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }
}
