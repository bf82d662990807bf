package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import bandwright.pipeline.rows.Cell;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/**
 * Reads the rows of one worksheet (ECMA-376 Part 1, 18.3.1): each {@code row} that has a cell, hidden ones too, with
 * its own number. A formula's cell has the value that the spreadsheet program stored with it; of merged cells the upper
 * left one has the value and the others are blank, and the grid names them.
 */
final class SheetReader {
    private final SharedStrings strings;
    private final Styles styles;
    private final Allowance allowance;
    private final Cells cells;
    private final NumberCells numbers;

    SheetReader(SharedStrings strings, Styles styles, Serials serials, Allowance allowance) {
        this.strings = strings;
        this.styles = styles;
        this.allowance = allowance;
        this.cells = new Cells(allowance);
        this.numbers = new NumberCells(serials, cells);
    }

    Grid grid(String name, Xml xml) throws XMLStreamException, Unreadable {
        List<GridRow> rows = rows(xml);
        Merges merges = new Merges(allowance);
        while (xml.next()) { // they stand below the rows: ECMA-376 Part 1, 18.3.1.99
            if (xml.starts("mergeCell")) {
                merges.add(xml.attribute("ref"));
            }
        }
        return new Grid(Optional.of(name), false, rows, merges.list());
    }

    private List<GridRow> rows(Xml xml) throws XMLStreamException, Unreadable {
        GridRows rows = new GridRows(allowance);
        int number = 0;
        while (xml.next() && !xml.ends("sheetData")) {
            if (xml.starts("row")) {
                number = rowNumber(xml.attribute("r"), number);
                boolean isHidden = Xml.isTrue(xml.attribute("hidden"));
                List<Cell> row = row(xml, number);
                if (!row.isEmpty()) {
                    rows.add(number, row, isHidden);
                }
            }
        }
        return rows.list();
    }

    private static int rowNumber(String text, int before) throws Unreadable {
        int number = text.isEmpty() ? before + 1 : Integer.parseInt(text);
        if (number <= before) {
            throw Unreadable.of("file-damaged"); // two rows with one number
        }
        return number;
    }

    private List<Cell> row(Xml xml, int number) throws XMLStreamException, Unreadable {
        List<Cell> row = new ArrayList<>();
        int column = -1;
        while (xml.next() && !xml.ends("row")) {
            if (!xml.starts("c")) {
                continue;
            }
            column = column(xml.attribute("r"), column);
            Cell cell = cell(xml, number);
            if (column >= Limits.SHEET_COLUMNS) {
                continue;
            }
            while (row.size() <= column) {
                row.add(Cell.EMPTY);
            }
            row.set(column, cell);
        }
        return row;
    }

    /** Without a reference it is the next. */
    private static int column(String reference, int before) {
        int column = Merges.column(reference);
        return column < 0 ? before + 1 : column;
    }

    private Cell cell(Xml xml, int row) throws XMLStreamException, Unreadable {
        String type = xml.attribute("t");
        String style = xml.attribute("s");
        StringBuilder value = new StringBuilder();
        String inline = "";
        boolean inValue = false;
        while (xml.next() && !xml.ends("c")) {
            if (xml.starts("is")) {
                inline = RichText.read(xml, "is", row);
            } else if (xml.starts("v")) {
                inValue = true;
            } else if (xml.ends("v")) {
                inValue = false;
            } else if (inValue && xml.isText()) {
                xml.addTextTo(value);
                Cells.checkLength(value.length(), row);
            }
        }
        return type.equals("inlineStr") ? cells.of(inline, row) : cell(type, style, value.toString(), row);
    }

    /** By the cell's type: ECMA-376 Part 1, 18.18.11. */
    private Cell cell(String type, String style, String value, int row) throws Unreadable {
        if (value.isEmpty()) {
            return Cell.EMPTY;
        }
        return switch (type) {
            case "s" -> strings.get(value);
            case "str" -> cells.of(RichText.unescaped(value), row);
            case "e" -> cells.of(value, row);
            case "b" -> cells.of(Xml.isTrue(value) ? "TRUE" : "FALSE", row);
            case "d" -> isoDay(value, row);
            default -> numbers.of(value, styles.format(style), row);
        };
    }

    private Cell isoDay(String value, int row) throws Unreadable {
        LocalDate day;
        try {
            day = LocalDate.parse(value.length() > 10 ? value.substring(0, 10) : value);
        } catch (DateTimeParseException e) {
            return cells.of(value, row);
        }
        return cells.keep(new Cell(value, Optional.of(day), false));
    }
}
