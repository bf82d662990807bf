package bandwright.pipeline.intake.format;

import bandwright.pipeline.rows.Cell;
import java.util.List;

/**
 * One row of a sheet.
 *
 * @param number as the spreadsheet program shows it; in CSV the record's number, the first being 1
 * @param cells from column A on, without blank ones at the end
 * @param isHidden whether the spreadsheet program hides it, as a filter does
 */
public record GridRow(int number, List<Cell> cells, boolean isHidden) {
    public GridRow {
        cells = List.copyOf(cells);
    }

    public boolean isBlank() {
        return cells.stream().allMatch(Cell::isBlank);
    }
}
