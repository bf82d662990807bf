package bandwright.rules.table;

import bandwright.rules.units.ShopUnits;
import java.util.Arrays;
import java.util.Map;

/** One row of a table while it is read: its cells by column, and the faults found in it. */
public final class Row {
    private final TableKind kind;
    private final Written written;
    private final ShopUnits units;
    private final Faults faults;

    Row(TableKind kind, Written written, ShopUnits units, Faults faults) {
        this.kind = kind;
        this.written = written;
        this.units = units;
        this.faults = faults;
    }

    /** A row as it is written: its number and its cells that are not empty, by column. */
    public record Written(int number, Map<String, String> cells) {
        public Written {
            cells = Map.copyOf(cells);
        }

        public String cell(String column) {
            return cells.getOrDefault(column, "");
        }
    }

    public Cell cell(String column) {
        if (!kind.columns().contains(column)) {
            throw new IllegalArgumentException(kind.file() + " has no column " + column);
        }
        return new Cell(place(column), written.cell(column), units, faults);
    }

    public String text(String column) {
        return cell(column).text();
    }

    public Place place(String column) {
        return new Place(kind.file(), written.number(), column);
    }

    /** Whether nothing was wrong with those cells so far, so that they can be compared with each other. */
    public boolean areSound(String... columns) {
        return Arrays.stream(columns).allMatch(column -> faults.isSound(place(column)));
    }

    public void fault(String column, String name, Object... about) {
        faults.add(place(column), name, about);
    }

    public int number() {
        return written.number();
    }
}
