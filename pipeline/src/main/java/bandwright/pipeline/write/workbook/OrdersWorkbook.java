package bandwright.pipeline.write.workbook;

import bandwright.pipeline.RowFate;
import bandwright.pipeline.RowFates;
import bandwright.pipeline.Run;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.rules.Rulebook;
import bandwright.rules.words.Words;
import java.util.List;
import java.util.Locale;

/** orders.xlsx: every row that was read, with what became of it. */
public final class OrdersWorkbook implements Output {
    public static final String FILE = "orders.xlsx";

    /** Its columns, in their order; the header is {@code orders-workbook.<name>}. */
    enum Column {
        FILE,
        SHEET,
        ROW,
        ORDER,
        LINE,
        BLANK,
        DESIGN,
        TEXTS,
        PIECES,
        OUTCOME,
        CODE,
        REASON,
        UNITS,
        PAGES,
        LOAD,
        COST;

        private static final List<Column> ALL = List.of(values());

        int number() {
            return ALL.indexOf(this);
        }
    }

    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        double spoilRate = rules.shop().spoilRate();
        return List.of(new OutFile(
                FILE,
                out -> WorkbookFile.write(
                        out,
                        run.id().date(),
                        book -> fill(
                                new TextSheet(book.newWorksheet(Words.say("orders-workbook.name")), header()),
                                run,
                                spoilRate))));
    }

    private static List<String> header() {
        return Column.ALL.stream()
                .map(column -> Words.say("orders-workbook." + column.name().toLowerCase(Locale.ROOT)))
                .toList();
    }

    private static void fill(TextSheet sheet, Run run, double spoilRate) {
        OrdersRow rows = new OrdersRow(run);
        UnitCosts costs = new UnitCosts(run, spoilRate);
        for (RowFate fate : RowFates.of(run)) {
            int row = sheet.next(rows.texts(fate));
            sheet.number(row, Column.ROW.number(), fate.row().from().row(), "0");
            sheet.number(row, Column.PIECES.number(), fate.ordered(), "0");
            costs.of(fate).ifPresent(cost -> sheet.number(row, Column.COST.number(), cost, "0.00"));
        }
        sheet.finish();
    }
}
