package bandwright.rules.table;

import java.util.HashMap;
import java.util.Map;

/** Sees to it that no two rows of a table have one name: the second is a fault that says where the first stands. */
public final class Once {
    private final Map<String, Integer> rows = new HashMap<>();

    /** Takes the name for that row; several parts of a key are told apart. */
    public void take(Row row, String column, String... name) {
        StringBuilder key = new StringBuilder();
        for (String part : name) {
            key.append(Names.fold(part)).append('\n');
        }
        if (key.toString().isBlank()) {
            return;
        }
        Integer first = rows.putIfAbsent(key.toString(), row.number());
        if (first != null) {
            row.fault(column, "twice", Quoted.text(String.join(" + ", name)), row.number(), first);
        }
    }
}
