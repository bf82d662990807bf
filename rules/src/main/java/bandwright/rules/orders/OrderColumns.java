package bandwright.rules.orders;

import bandwright.rules.table.Cell;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Nearest;
import bandwright.rules.table.Quoted;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.ShopUnits;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * order-columns.csv: which field a header of an order file means. "ORDER-NO." is the field order, as case, punctuation
 * and spaces don't count; "Text: Name" is the field text:name without a row of the table.
 */
public final class OrderColumns {
    private static final String TEXT = "text:";

    private final List<OrderColumn> list;
    /** By the folded site, then by the folded header; of two rows with one header the first wins. */
    private final Map<String, Map<String, OrderField>> fields = new HashMap<>();

    public OrderColumns(List<OrderColumn> list) {
        this.list = List.copyOf(list);
        for (OrderColumn column : this.list) {
            fields.computeIfAbsent(Names.fold(column.site()), site -> new HashMap<>())
                    .putIfAbsent(fold(column.header()), column.field());
        }
    }

    /** In the order of the table. */
    public List<OrderColumn> list() {
        return list;
    }

    /** The field that this header names at that site: the site's own headers first, then those of every site. */
    public Optional<OrderField> find(String site, String header) {
        String key = fold(header);
        if (key.isEmpty()) {
            return Optional.empty();
        }
        return findIn(Names.fold(site), key).or(() -> findIn("", key)).or(() -> textField(header));
    }

    private Optional<OrderField> findIn(String site, String key) {
        return Optional.ofNullable(fields.getOrDefault(site, Map.of()).get(key));
    }

    private static Optional<OrderField> textField(String header) {
        String folded = Names.fold(header).replace(" :", ":");
        if (!folded.startsWith(TEXT) || folded.length() == TEXT.length()) {
            return Optional.empty();
        }
        return Optional.of(OrderField.text(folded.substring(TEXT.length()).strip()));
    }

    /** Letters and digits only, in one case: "Order #" is "order". */
    private static String fold(String header) {
        StringBuilder out = new StringBuilder(header.length());
        header.codePoints().filter(Character::isLetterOrDigit).forEach(out::appendCodePoint);
        return out.toString().toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }

    /** Reads order-columns.csv. One header of a site can't be two fields. */
    public static OrderColumns read(Table table, ShopUnits units, Faults faults) {
        Map<String, Taken> taken = new HashMap<>();
        return new OrderColumns(table.read(units, faults, row -> column(row, taken)));
    }

    private record Taken(int row, OrderField field) {}

    private static OrderColumn column(Row row, Map<String, Taken> taken) {
        String site = row.text("site");
        OrderField field = field(row.cell("field").needed());
        String header = row.cell("header").needed().text();
        if (row.areSound("field", "header")) {
            Taken first = taken.putIfAbsent(Names.fold(site) + "\n" + fold(header), new Taken(row.number(), field));
            if (first != null && !first.field().equals(field)) {
                row.fault("header", "header.twice", Quoted.text(header), row.number(), first.row());
            }
        }
        return new OrderColumn(site, field, header);
    }

    private static OrderField field(Cell cell) {
        String name = OrderField.spelled(cell.text());
        if (OrderField.isKnown(name)) {
            return new OrderField(name);
        }
        if (!cell.isEmpty()) {
            Optional<String> near = Nearest.of(name, OrderField.names());
            String listed = String.join(", ", OrderField.names());
            if (near.isPresent()) {
                cell.fault("word.near", near.get(), listed);
            } else {
                cell.fault("word", listed);
            }
        }
        return OrderField.NOTE;
    }
}
