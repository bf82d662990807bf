package bandwright.pipeline.rows;

import bandwright.rules.orders.OrderField;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The header row of a sheet: its texts as written, and which column holds which field. Shared by the sheet's rows. */
public final class Header {
    private final List<String> texts;
    private final Map<OrderField, Integer> columns;

    public Header(List<String> texts, Map<OrderField, Integer> columns) {
        this.texts = List.copyOf(texts);
        this.columns = new LinkedHashMap<>(columns);
    }

    public List<String> texts() {
        return texts;
    }

    public Optional<Integer> find(OrderField field) {
        return Optional.ofNullable(columns.get(field));
    }

    public Set<OrderField> fields() {
        return columns.keySet();
    }
}
