package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import bandwright.pipeline.rows.Cell;
import java.util.HashMap;
import java.util.Map;

/** Makes cells of texts within the limits; one cell serves all places that say the same. */
final class Cells {
    /** Order files repeat a few short words: skus, designs, quantities, towns. */
    private static final int REMEMBERED = 4096;

    private static final int SHORT = 40;

    private final Allowance allowance;
    private final Map<String, Cell> remembered = new HashMap<>();

    Cells(Allowance allowance) {
        this.allowance = allowance;
    }

    Cell of(String text, int row) throws Unreadable {
        if (text.isEmpty()) {
            return Cell.EMPTY;
        }
        Cell known = remembered.get(text);
        if (known != null) {
            return known;
        }
        checkLength(text.length(), row);
        allowance.keepCell(text);
        Cell cell = Cell.of(text);
        if (text.length() <= SHORT && remembered.size() < REMEMBERED) {
            remembered.put(text, cell);
        }
        return cell;
    }

    Cell keep(Cell cell) throws Unreadable {
        allowance.keepCell(cell.text());
        return cell;
    }

    /** Row 0 is a text that the workbook stores apart from its rows. */
    static void checkLength(int characters, int row) throws Unreadable {
        if (characters <= Limits.CELL_CHARACTERS) {
            return;
        }
        throw row == 0
                ? Unreadable.of("string-too-long", Limits.CELL_CHARACTERS)
                : Unreadable.of("cell-too-long", row, Limits.CELL_CHARACTERS);
    }
}
