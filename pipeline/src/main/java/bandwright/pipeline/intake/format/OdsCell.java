package bandwright.pipeline.intake.format;

import bandwright.pipeline.rows.Cell;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;

/**
 * Reads one cell by its office:value-type (OpenDocument 1.2, Part 1, 19.385): a number from its value, not from the
 * text that is shown, which may be rounded or written in a country's way - but "00123" is kept where the value is 123.
 */
final class OdsCell {
    /** Signs, then one run of digits: what a format adds to a whole number without changing it. */
    private static final Pattern PADDED = Pattern.compile("[^\\d.,]*?(\\d+)[^\\d.,]*");

    private static final NumberFormat PERCENT = NumberFormat.of("0%");

    private final Cells cells;
    private final NumberCells numbers;

    OdsCell(Cells cells) {
        this.cells = cells;
        this.numbers = new NumberCells(new Serials(false), cells);
    }

    /** Reads on to the end of the cell that has just begun. */
    Cell read(Xml xml, int row) throws XMLStreamException, Unreadable {
        String type = xml.attribute(Ods.OFFICE, "value-type");
        String value =
                switch (type) {
                    case "float", "percentage", "currency" -> xml.attribute(Ods.OFFICE, "value");
                    case "date" -> xml.attribute(Ods.OFFICE, "date-value");
                    case "boolean" -> xml.attribute(Ods.OFFICE, "boolean-value");
                    default -> xml.attribute(Ods.OFFICE, "string-value");
                };
        String shown = OdsText.read(xml, row);
        if (value.isEmpty()) {
            return cells.of(error(shown), row);
        }
        return switch (type) {
            case "float" -> number(value, shown, row);
            case "percentage" -> numbers.of(value, PERCENT, row);
            case "currency" -> numbers.of(value, NumberFormat.GENERAL, row);
            case "date" -> date(value, row);
            case "boolean" -> cells.of(Xml.isTrue(value) ? "TRUE" : "FALSE", row);
            default -> cells.of(value, row);
        };
    }

    private Cell number(String value, String shown, int row) throws Unreadable {
        Cell plain = numbers.of(value, NumberFormat.GENERAL, row);
        Matcher padded = PADDED.matcher(shown);
        boolean isPadded = !plain.isDamagedNumber()
                && padded.matches()
                && padded.group(1).replaceFirst("^0+(?=.)", "").equals(plain.text());
        return isPadded ? cells.of(shown, row) : plain;
    }

    /** A failed formula that this family of programs numbers (Err:502) has no name in the others. */
    private static String error(String shown) {
        return shown.matches("Err:\\d{3}") ? "#VALUE!" : shown;
    }

    private Cell date(String value, int row) throws Unreadable {
        Optional<LocalDateTime> moment = moment(value);
        return moment.isPresent() ? numbers.moment(moment.get()) : cells.of(value, row);
    }

    private static Optional<LocalDateTime> moment(String value) {
        try {
            return Optional.of(
                    value.indexOf('T') < 0
                            ? LocalDate.parse(value).atStartOfDay()
                            : LocalDateTime.parse(value).withNano(0));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
