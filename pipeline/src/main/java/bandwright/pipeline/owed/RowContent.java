package bandwright.pipeline.owed;

import bandwright.pipeline.past.Signature;
import bandwright.pipeline.rows.Cell;
import bandwright.pipeline.rows.Row;
import bandwright.rules.orders.OrderField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * A digest of what a row orders, by which the same row is known in next week's export: its status, dates and address
 * may have changed since.
 */
final class RowContent {
    /** What is not of the order as a whole and yet doesn't say what is made. */
    private static final Set<OrderField> BESIDE = Set.of(OrderField.PRICE, OrderField.APPROVED);

    private RowContent() {}

    static String of(Row row) {
        List<String> words = new ArrayList<>();
        List<OrderField> fields = new ArrayList<>(row.header().fields());
        fields.sort(Comparator.comparing(OrderField::name));
        for (OrderField field : fields) {
            if (!OrderField.OF_THE_ORDER.contains(field)
                    && !BESIDE.contains(field)
                    && !row.cell(field).isBlank()) {
                words.add(field.name());
                words.add(text(row.cell(field)));
            }
        }
        return Signature.digest(words);
    }

    private static String text(Cell cell) {
        return cell.date().map(LocalDate::toString).orElseGet(() -> cell.text().strip());
    }
}
