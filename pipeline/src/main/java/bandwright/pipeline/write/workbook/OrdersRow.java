package bandwright.pipeline.write.workbook;

import bandwright.pipeline.RowFate;
import bandwright.pipeline.Run;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.SheetPage;
import bandwright.pipeline.write.workbook.OrdersWorkbook.Column;
import bandwright.rules.orders.OrderField;
import bandwright.rules.words.Words;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The cells of one row of orders.xlsx. Numbers are put in afterwards, over the empty texts of their cells. */
final class OrdersRow {
    /** What stands between several of a kind in one cell. */
    private static final String BETWEEN = "; ";

    private final Map<String, String> pages = new HashMap<>();
    private final Map<String, Integer> loads = new HashMap<>();

    OrdersRow(Run run) {
        for (SheetPage sheet : SheetFiles.of(run.tiled()).pages()) {
            String page = Words.say("orders-workbook.page", sheet.file(), sheet.page());
            for (Placed placed : sheet.sheet().placed()) {
                pages.put(placed.unit().id(), page);
                loads.put(placed.unit().id(), placed.load());
            }
        }
    }

    List<String> texts(RowFate fate) {
        return Arrays.stream(Column.values()).map(column -> text(column, fate)).toList();
    }

    private String text(Column column, RowFate fate) {
        From from = fate.row().from();
        return switch (column) {
            case FILE -> from.file();
            case SHEET -> from.sheet().orElse("");
            case ORDER -> fate.order();
            case LINE -> fate.line().map(OrderLine::line).orElseGet(() -> cell(fate, OrderField.LINE));
            case BLANK ->
                understood(fate, OrderField.SKU, unit -> unit.matched().blank().sku());
            case DESIGN ->
                understood(
                        fate, OrderField.DESIGN, unit -> unit.matched().design().name());
            case TEXTS -> written(fate);
            case OUTCOME -> fate.end().word();
            case CODE -> notMade(fate, held -> held.reason().code(), SkippedRow::code);
            case REASON -> notMade(fate, held -> held.reason().message(), SkippedRow::message);
            case UNITS -> units(fate);
            case PAGES -> distinct(fate.units().stream().map(unit -> pages.getOrDefault(unit.id(), "")));
            case LOAD ->
                distinct(fate.units().stream()
                        .map(unit -> loads.getOrDefault(unit.id(), 0).toString()));
            case ROW, PIECES, COST, INK -> "";
        };
    }

    /** What the row's word was understood as, where a piece of it is made; else the word itself. */
    private static String understood(RowFate fate, OrderField field, Function<Unit, String> name) {
        return fate.units().isEmpty()
                ? cell(fate, field)
                : distinct(fate.units().stream().map(name));
    }

    static String units(RowFate fate) {
        return distinct(fate.units().stream().map(Unit::id));
    }

    private static String cell(RowFate fate, OrderField field) {
        return fate.row().cell(field).text();
    }

    /** Those of the pieces that are made; of a row without one, the words of the row. */
    private static String written(RowFate fate) {
        if (!fate.units().isEmpty()) {
            return distinct(fate.units().stream().flatMap(unit -> texts(unit.texts())));
        }
        return fate.line()
                .map(OrderLine::wording)
                .map(wording -> distinct(Stream.concat(
                        Stream.of(wording.personalisation()).filter(text -> !text.isEmpty()),
                        texts(wording.columns()))))
                .orElse("");
    }

    private static Stream<String> texts(SortedMap<String, String> texts) {
        return texts.entrySet().stream().map(text -> text.getKey() + ": " + text.getValue());
    }

    private static String notMade(
            RowFate fate, Function<HeldRow, String> ofHeld, Function<SkippedRow, String> ofSkipped) {
        return distinct(Stream.concat(
                fate.held().stream().map(ofHeld), fate.skipped().stream().map(ofSkipped)));
    }

    private static String distinct(Stream<String> texts) {
        return texts.distinct().collect(Collectors.joining(BETWEEN));
    }
}
