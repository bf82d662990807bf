package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import bandwright.pipeline.rows.Cell;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/**
 * Reads the rows of one worksheet (ECMA-376 Part 1, 18.3.1): each {@code row} that has a cell, hidden ones too, with
 * its own number. A formula's cell has the value that the spreadsheet program stored with it; of merged cells the upper
 * left one has the value and the others are blank.
 */
final class SheetReader {
    private static final DateTimeFormatter DAY_AND_TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);
    /** No number is longer; what is, is no number. */
    private static final int NUMBER_CHARACTERS = 100;

    private final SharedStrings strings;
    private final Styles styles;
    private final Serials serials;
    private final Allowance allowance;
    private final Cells cells;

    SheetReader(SharedStrings strings, Styles styles, Serials serials, Allowance allowance) {
        this.strings = strings;
        this.styles = styles;
        this.serials = serials;
        this.allowance = allowance;
        this.cells = new Cells(allowance);
    }

    List<GridRow> rows(Xml xml) throws XMLStreamException, Unreadable {
        GridRows rows = new GridRows(allowance);
        int number = 0;
        while (xml.next() && !xml.ends("sheetData")) {
            if (xml.starts("row")) {
                number = rowNumber(xml.attribute("r"), number);
                List<Cell> row = row(xml, number);
                if (!row.isEmpty()) {
                    rows.add(number, row);
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

    /** The column that a reference like AB12 begins with, A being 0; without one it is the next. */
    private static int column(String reference, int before) {
        int column = 0;
        for (int i = 0; i < reference.length() && column <= Limits.SHEET_COLUMNS; i++) {
            char c = reference.charAt(i);
            if (c < 'A' || c > 'Z') {
                break;
            }
            column = column * 26 + (c - 'A' + 1);
        }
        return column == 0 ? before + 1 : column - 1;
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
            default -> number(value, styles.format(style), row);
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

    private Cell number(String text, NumberFormat format, int row) throws Unreadable {
        double value;
        try {
            value = text.length() > NUMBER_CHARACTERS ? Double.NaN : Double.parseDouble(text);
        } catch (NumberFormatException e) {
            value = Double.NaN;
        }
        if (!Double.isFinite(value)) {
            return cells.of(text, row);
        }
        if (format.isDate()) {
            return day(value, row);
        }
        String shown = format.shown(value);
        return NumberFormat.isDamaged(value)
                ? cells.keep(new Cell(shown, Optional.empty(), true))
                : cells.of(shown, row);
    }

    private Cell day(double value, int row) throws Unreadable {
        Optional<LocalDateTime> moment = serials.find(value);
        if (moment.isEmpty()) {
            return cells.of(NumberFormat.GENERAL.shown(value), row);
        }
        LocalDate day = moment.get().toLocalDate();
        boolean midnight = moment.get().toLocalTime().equals(LocalTime.MIDNIGHT);
        String text = midnight ? day.toString() : moment.get().format(DAY_AND_TIME);
        return cells.keep(new Cell(text, Optional.of(day), false));
    }
}
