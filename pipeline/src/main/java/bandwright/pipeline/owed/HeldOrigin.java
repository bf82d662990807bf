package bandwright.pipeline.owed;

import bandwright.pipeline.held.HeldFile;
import bandwright.pipeline.rows.Row;
import bandwright.rules.table.Names;
import java.util.List;
import java.util.Optional;

/** Where a row of a held file first was read: file | sheet | row. */
final class HeldOrigin {
    private HeldOrigin() {}

    /** The words in its column {@code from}; empty for a row of any other file. */
    static Optional<String> of(Row row) {
        List<String> headers = row.header().texts();
        if (!HeldFile.has(headers)) {
            return Optional.empty();
        }
        for (int column = 0; column < headers.size() && column < row.cells().size(); column++) {
            if (Names.same(headers.get(column), HeldFile.FROM)) {
                return Optional.of(row.cells().get(column).text().strip());
            }
        }
        return Optional.of("");
    }
}
