package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import bandwright.pipeline.rows.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/**
 * Reads the rows of one table (OpenDocument 1.2, Part 1, 9.1). A row or cell that says it is repeated stands there so
 * many times; blank ones only count on, as every table ends in a million of them.
 */
final class OdsTable {
    private final Merges merges;
    private final GridRows rows;
    private final OdsCell cells;
    private int number;

    OdsTable(Allowance allowance) {
        merges = new Merges(allowance);
        rows = new GridRows(allowance);
        cells = new OdsCell(new Cells(allowance));
    }

    /** Reads on to the end of the table. */
    Grid read(String name, Xml xml) throws XMLStreamException, Unreadable {
        while (xml.next() && !xml.ends("table")) {
            if (xml.starts("table-row")) {
                row(xml);
            } else if (xml.starts("shapes") || xml.starts("forms")) {
                xml.skip(); // charts have tables of their own
            }
        }
        return new Grid(Optional.of(name), false, rows.list(), merges.list());
    }

    private void row(Xml xml) throws XMLStreamException, Unreadable {
        int times = count(xml.attribute(Ods.TABLE, "number-rows-repeated"), Limits.SHEET_ROWS);
        String visibility = xml.attribute(Ods.TABLE, "visibility");
        boolean isHidden = visibility.equals("collapse") || visibility.equals("filter");
        List<Cell> row = List.copyOf(cells(xml));
        boolean isBlank = row.stream().allMatch(Cell::isBlank);
        for (int i = 1; i <= times && !isBlank; i++) {
            rows.add(number + i, row, isHidden);
        }
        number += Math.min(times, Limits.SHEET_ROWS + 1 - number);
    }

    private List<Cell> cells(Xml xml) throws XMLStreamException, Unreadable {
        List<Cell> row = new ArrayList<>();
        int column = 0;
        while (xml.next() && !xml.ends("table-row")) {
            if (!xml.isStart()) {
                continue;
            }
            int times = count(xml.attribute(Ods.TABLE, "number-columns-repeated"), Limits.SHEET_COLUMNS);
            if (xml.starts("table-cell")) {
                int spanned = count(xml.attribute(Ods.TABLE, "number-rows-spanned"), Limits.SHEET_ROWS);
                merges.add(number + 1, number + spanned, column);
                fill(row, column, times, cells.read(xml, number + 1));
            } else {
                xml.skip(); // covered-table-cell: lies under a merged one
            }
            column = Math.min(Limits.SHEET_COLUMNS, column + times);
        }
        return row;
    }

    private static void fill(List<Cell> row, int column, int times, Cell cell) {
        int end = Math.min(Limits.SHEET_COLUMNS, column + times);
        if (cell.isBlank()) {
            return;
        }
        while (row.size() < column) {
            row.add(Cell.EMPTY);
        }
        while (row.size() < end) {
            row.add(cell);
        }
    }

    /** At least 1, at most one more than there is room for. */
    private static int count(String text, int most) {
        double count = text.isEmpty() ? 1 : NumberCells.parse(text);
        return count > most ? most + 1 : count >= 1 ? (int) count : 1;
    }
}
