package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import bandwright.pipeline.rows.Cell;
import java.util.ArrayList;
import java.util.List;

/** Gathers the rows of one sheet within the limits: blank cells and blank rows at the end fall away. */
final class GridRows {
    private final Allowance allowance;
    private final List<GridRow> rows = new ArrayList<>();
    private int filled;

    GridRows(Allowance allowance) {
        this.allowance = allowance;
    }

    /** Blank rows between filled ones count, whether the file stores them or not; beyond a sane gap they don't. */
    void add(int number, List<Cell> cells, boolean isHidden) throws Unreadable {
        int above = rows.isEmpty() ? 0 : rows.get(rows.size() - 1).number();
        if (number - above <= Limits.BLANK_ROWS) {
            for (int blank = above + 1; blank < number; blank++) {
                append(blank, List.of(), false);
            }
        }
        append(number, cells, isHidden);
    }

    private void append(int number, List<Cell> cells, boolean isHidden) throws Unreadable {
        if (number > Limits.SHEET_ROWS) {
            throw Unreadable.of("too-many-rows", Limits.SHEET_ROWS);
        }
        int last = cells.size();
        while (last > 0 && cells.get(last - 1).isBlank()) {
            last--;
        }
        allowance.keepRow(last);
        rows.add(new GridRow(number, cells.subList(0, last), isHidden));
        filled = last > 0 ? rows.size() : filled;
    }

    List<GridRow> list() {
        return rows.subList(0, filled);
    }
}
