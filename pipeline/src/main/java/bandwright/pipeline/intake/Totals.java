package bandwright.pipeline.intake;

import bandwright.pipeline.rows.Cell;
import bandwright.pipeline.rows.Row;
import bandwright.rules.orders.OrderField;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Whether a row only sums up the rows above it: it has no order, names nothing that could be made, and all its cells
 * are numbers or the word for a sum - "Total", "", "", "57". Such a row is no order with its number missing.
 */
final class Totals {
    private static final Pattern WORD =
            Pattern.compile("(grand |sub[- ]?)?totals?( (orders|items|pieces|quantity|qty|price))?|sum|count|average");

    /** With signs of money, thousands and share. */
    private static final Pattern NUMBER =
            Pattern.compile("[\\p{Sc}A-Z()+-]{0,4} ?\\d[\\d.,' \\u00A0]*[\\p{Sc}A-Z()%]{0,4}");

    private static final List<OrderField> NAMES = List.of(
            OrderField.ORDER, OrderField.SKU, OrderField.PRODUCT, OrderField.DESIGN, OrderField.PERSONALISATION);

    private Totals() {}

    static boolean is(Row row) {
        boolean namesNothing = NAMES.stream().map(row::cell).allMatch(cell -> cell.isBlank() || isWord(cell));
        List<Cell> filled = row.cells().stream().filter(cell -> !cell.isBlank()).toList();
        return namesNothing
                && filled.stream().allMatch(cell -> isWord(cell) || isNumber(cell))
                && filled.stream().anyMatch(Totals::isWord)
                && filled.stream().anyMatch(cell -> !isWord(cell));
    }

    private static boolean isWord(Cell cell) {
        String text = cell.text().strip().toLowerCase(Locale.ROOT);
        String bare = text.endsWith(":") ? text.substring(0, text.length() - 1).strip() : text;
        return bare.length() < 40 && WORD.matcher(bare).matches();
    }

    private static boolean isNumber(Cell cell) {
        String text = cell.text().strip();
        return text.length() < 40 && (NUMBER.matcher(text).matches() || text.startsWith("#"));
    }
}
