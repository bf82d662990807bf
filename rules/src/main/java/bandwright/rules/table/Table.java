package bandwright.rules.table;

import bandwright.rules.units.ShopUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A table as it is written, before anybody asks what its cells mean.
 *
 * @param isOwn whether the shop wrote it, rather than that it came with the program
 * @param isRead false where the file could not be read, so that nothing is known about what it holds
 */
public record Table(TableKind kind, boolean isOwn, boolean isRead, List<Row.Written> rows) {
    public Table {
        rows = List.copyOf(rows);
    }

    static Table unread(TableKind kind, boolean isOwn) {
        return new Table(kind, isOwn, false, List.of());
    }

    public Table with(List<Row.Written> others) {
        return new Table(kind, isOwn, isRead, others);
    }

    public Place place() {
        return new Place(kind.file(), 0, "");
    }

    /** What the reader makes of each row; rows with a fault are left out. */
    public <T> List<T> read(ShopUnits units, Faults faults, Function<Row, T> reader) {
        List<T> all = new ArrayList<>();
        for (Row.Written written : rows) {
            Row row = new Row(kind, written, units, faults);
            T value = reader.apply(row);
            if (faults.isRowSound(row.place(""))) {
                all.add(value);
            }
        }
        return all;
    }
}
