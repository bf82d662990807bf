package bandwright.pipeline.write.workbook;

import bandwright.pipeline.RowFate;
import bandwright.pipeline.RowFates;
import bandwright.pipeline.Run;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.SheetPage;
import bandwright.rules.Rulebook;
import bandwright.rules.words.Words;
import java.util.List;
import java.util.Locale;
import org.dhatim.fastexcel.Workbook;

/** orders.xlsx: every row that was read, with what became of it; then each sheet's ink, and what each order costs. */
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
        COST,
        INK;

        private static final List<Column> ALL = List.of(values());

        int number() {
            return ALL.indexOf(this);
        }
    }

    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        double spoilRate = rules.shop().spoilRate();
        return List.of(
                new OutFile(FILE, out -> WorkbookFile.write(out, run.id().date(), book -> fill(book, run, spoilRate))));
    }

    private static List<String> header() {
        return Column.ALL.stream()
                .map(column -> Words.say("orders-workbook." + column.name().toLowerCase(Locale.ROOT)))
                .toList();
    }

    private static void fill(Workbook book, Run run, double spoilRate) {
        TextSheet sheet = new TextSheet(book.newWorksheet(Words.say("orders-workbook.name")), header());
        OrdersRow rows = new OrdersRow(run);
        UnitInks inks = new UnitInks(run.sights());
        UnitCosts costs = new UnitCosts(run, inks, spoilRate);
        for (RowFate fate : RowFates.of(run)) {
            int row = sheet.next(rows.texts(fate));
            sheet.number(row, Column.ROW.number(), fate.row().from().row(), "0");
            sheet.number(row, Column.PIECES.number(), fate.ordered(), "0");
            costs.of(fate).ifPresent(cost -> sheet.number(row, Column.COST.number(), cost, "0.00"));
            inks.cm2(fate.units()).ifPresent(ink -> sheet.number(row, Column.INK.number(), ink, "0"));
        }
        sheet.finish();
        sheets(new TextSheet(book.newWorksheet(Words.say("orders-workbook.sheets")), sheetsHeader()), run, inks);
        OrderCosts.write(
                new TextSheet(book.newWorksheet(Words.say("orders-workbook.costs")), OrderCosts.header()),
                run.units(),
                costs);
    }

    /** How much ink each sheet takes, to be compared with the others. */
    private static void sheets(TextSheet sheet, Run run, UnitInks inks) {
        for (SheetPage page : SheetFiles.of(run.tiled()).pages()) {
            int row = sheet.next(List.of(Words.say("orders-workbook.page", page.file(), page.page()), "", ""));
            List<Unit> units = page.sheet().placed().stream().map(Placed::unit).toList();
            sheet.number(row, 1, units.size(), "0");
            inks.cm2(units).ifPresent(ink -> sheet.number(row, 2, ink, "0"));
        }
        sheet.finish();
    }

    private static List<String> sheetsHeader() {
        return List.of(
                Words.say("orders-workbook.pages"),
                Words.say("orders-workbook.units-on-it"),
                Words.say("orders-workbook.ink"));
    }
}
