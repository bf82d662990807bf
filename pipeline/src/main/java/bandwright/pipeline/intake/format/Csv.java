package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import bandwright.pipeline.rows.Cell;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads texts parted by comma, semicolon, tab or bar, with quotes as RFC 4180 has them. The separator is the one that
 * makes a header row; a row's number is its record's, so a quoted line break doesn't count and a blank line does, as
 * spreadsheet programs show it.
 */
final class Csv {
    private static final char[] SEPARATORS = {',', ';', '\t', '|'};
    private static final int HEADER_WITHIN = 20;

    /** 1.23457E+12: what spreadsheet programs make of a long number when they save text; its digits are lost. */
    private static final Pattern ROUNDED = Pattern.compile("\\s*\\d([.,]\\d+)?E\\+\\d{2,3}\\s*");

    private static final int SHORT = 40;

    private Csv() {}

    static List<Grid> read(Path file, Allowance allowance, ToIntFunction<List<Cell>> headerScore)
            throws IOException, Unreadable {
        CsvText text = CsvText.read(file);
        char separator = separator(text, headerScore);
        GridRows rows = new GridRows(allowance);
        Cells cells = new Cells(allowance);
        try (Reader in = text.open();
                CSVParser parser = format(separator).parse(in)) {
            for (Iterator<CSVRecord> records = parser.iterator(); hasNext(records, parser); ) {
                CSVRecord each = records.next();
                int number = Math.toIntExact(each.getRecordNumber());
                rows.add(number, cells(each, number, cells), false);
            }
        }
        return List.of(new Grid(Optional.empty(), false, rows.list(), List.of()));
    }

    private static List<Cell> cells(CSVRecord each, int number, Cells cells) throws Unreadable {
        int width = Math.min(each.size(), Limits.SHEET_COLUMNS);
        List<Cell> row = new ArrayList<>(width);
        for (int column = 0; column < width; column++) {
            row.add(cell(each.get(column), number, cells));
        }
        return row;
    }

    private static Cell cell(String text, int row, Cells cells) throws Unreadable {
        boolean isDamaged = text.length() < SHORT && ROUNDED.matcher(text).matches();
        return isDamaged ? cells.keep(new Cell(text, Optional.empty(), true)) : cells.of(text, row);
    }

    /** A quote that never closes would swallow all orders under it into one cell. */
    private static boolean hasNext(Iterator<CSVRecord> records, CSVParser parser) throws Unreadable {
        try {
            return records.hasNext();
        } catch (UncheckedIOException | IllegalStateException e) {
            throw Unreadable.of("csv-quote-open", parser.getRecordNumber() + 1);
        }
    }

    private static char separator(CsvText text, ToIntFunction<List<Cell>> headerScore) throws IOException {
        char best = SEPARATORS[0];
        int bestScore = 0;
        for (char separator : SEPARATORS) {
            int score = score(text, separator, headerScore);
            if (score > bestScore) {
                best = separator;
                bestScore = score;
            }
        }
        return best;
    }

    private static int score(CsvText text, char separator, ToIntFunction<List<Cell>> headerScore) throws IOException {
        int best = 0;
        try (Reader in = text.open();
                CSVParser parser = format(separator).parse(in)) {
            for (CSVRecord each : parser) {
                if (each.getRecordNumber() > HEADER_WITHIN) {
                    return best;
                }
                best = Math.max(
                        best, headerScore.applyAsInt(each.stream().map(Cell::of).toList()));
            }
        } catch (UncheckedIOException | IllegalStateException e) {
            return best; // another separator may make sense of the quotes
        }
        return best;
    }

    private static CSVFormat format(char separator) {
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setTrailingData(true) // "11" mug", as careless exports write it, is the text 11 mug"
                .get();
    }
}
