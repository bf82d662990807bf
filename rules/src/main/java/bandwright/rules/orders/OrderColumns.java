package bandwright.rules.orders;

import bandwright.rules.table.Cell;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Nearest;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.ShopUnits;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** order-columns.csv: the headers that each field goes by, and those that every shop has. */
public record OrderColumns(List<OrderColumn> list) {
    public OrderColumns {
        list = List.copyOf(list);
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
        Taken first = taken.putIfAbsent(Names.fold(site) + "\n" + bare(header), new Taken(row.number(), field));
        if (first != null && !first.field().equals(field) && row.areSound("field", "header")) {
            row.fault("header", "header.twice", header, row.number(), first.row());
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

    /** Case, punctuation and spaces of a header are ignored. */
    private static String bare(String header) {
        StringBuilder out = new StringBuilder();
        header.toLowerCase(Locale.ROOT)
                .codePoints()
                .filter(Character::isLetterOrDigit)
                .forEach(out::appendCodePoint);
        return out.toString();
    }
}
