package bandwright.pipeline.intake.format;

import java.util.List;
import java.util.Optional;

/**
 * One sheet of an order file as it was read: its rows in order, before anybody knows what they mean. Blank rows between
 * filled ones are here, whether the file stores them or not; those under the last filled one are not.
 *
 * @param sheet its name; empty in CSV
 * @param isHidden whether the spreadsheet program hides it: then it has no rows here
 * @param merges the cells that are one cell over several rows; their value stands in the first row only
 */
public record Grid(Optional<String> sheet, boolean isHidden, List<GridRow> rows, List<Merge> merges) {
    public Grid {
        rows = List.copyOf(rows);
        merges = List.copyOf(merges);
    }

    static Grid hidden(String sheet) {
        return new Grid(Optional.of(sheet), true, List.of(), List.of());
    }
}
