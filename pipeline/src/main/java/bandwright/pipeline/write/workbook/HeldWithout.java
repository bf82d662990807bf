package bandwright.pipeline.write.workbook;

import bandwright.pipeline.held.HeldFile;
import bandwright.rules.table.Names;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** held.xlsx of a run without the rows of one order, so that the others can still be mended and dropped again. */
public final class HeldWithout {
    private HeldWithout() {}

    /** Whether other orders are held in it, too. */
    public static boolean hasOthers(Path held, String order) throws IOException {
        return sheets(held).stream().anyMatch(sheet -> !without(sheet, order).isEmpty());
    }

    public static void write(Path held, String order, OutputStream out) throws IOException {
        List<List<WorkbookBack.Row>> sheets = sheets(held);
        WorkbookFile.write(out, LocalDate.EPOCH, book -> {
            int number = 0;
            for (List<WorkbookBack.Row> sheet : sheets) {
                List<WorkbookBack.Row> rows = without(sheet, order);
                if (!rows.isEmpty()) {
                    number++;
                    TextSheet texts = new TextSheet(
                            book.newWorksheet(Words.say("held-workbook.sheet", number)),
                            sheet.get(0).cells());
                    rows.forEach(row -> texts.next(row.cells()));
                    texts.finish();
                }
            }
        });
    }

    /** Those with held rows, not the lists that cells offer. */
    private static List<List<WorkbookBack.Row>> sheets(Path held) throws IOException {
        return WorkbookBack.read(held).sheets().stream()
                .filter(sheet -> !sheet.isEmpty() && HeldFile.has(sheet.get(0).cells()))
                .toList();
    }

    /** The rows under the header that don't have the order's number in a cell of their own. */
    private static List<WorkbookBack.Row> without(List<WorkbookBack.Row> sheet, String order) {
        List<WorkbookBack.Row> rows = new ArrayList<>(sheet.subList(1, sheet.size()));
        rows.removeIf(row -> row.cells().stream().anyMatch(cell -> Names.same(cell, order)));
        return rows;
    }
}
