package bandwright.rules.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the bytes of a CSV file (RFC 4180, UTF-8) into a table, and notes what is wrong with its form. */
public final class CsvTable {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setIgnoreEmptyLines(false)
            .setIgnoreSurroundingSpaces(true)
            .get();
    private static final char MARK = '\uFEFF';

    private final TableKind kind;
    private final boolean isOwn;
    private final Faults faults;

    private CsvTable(TableKind kind, boolean isOwn, Faults faults) {
        this.kind = kind;
        this.isOwn = isOwn;
        this.faults = faults;
    }

    public static Table parse(TableKind kind, boolean isOwn, byte[] bytes, Faults faults) {
        return new CsvTable(kind, isOwn, faults).table(bytes);
    }

    /** The names of the columns as they are written; none where the file can't be read. */
    static List<String> header(byte[] bytes) throws IOException {
        String text = new String(bytes, StandardCharsets.UTF_8);
        try (CSVParser parser = CSVParser.parse(new StringReader(unmarked(text)), FORMAT)) {
            return parser.stream()
                    .filter(record -> !isEmpty(record))
                    .findFirst()
                    .map(record -> record.stream().map(String::strip).toList())
                    .orElse(List.of());
        }
    }

    private static String unmarked(String text) {
        return text.isEmpty() || text.charAt(0) != MARK ? text : text.substring(1);
    }

    private Table table(byte[] bytes) {
        Optional<String> text = decoded(bytes);
        if (text.isEmpty()) {
            return Table.unread(kind, isOwn);
        }
        List<CSVRecord> records = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text.get()), FORMAT)) {
            for (CSVRecord record : parser) {
                records.add(record);
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            faults.add(place(records.size() + 1, ""), "csv");
            return Table.unread(kind, isOwn);
        }
        return table(records);
    }

    private Table table(List<CSVRecord> records) {
        int header = 0;
        while (header < records.size() && isEmpty(records.get(header))) {
            header++;
        }
        if (header == records.size()) {
            return new Table(kind, isOwn, true, List.of());
        }
        if (isOtherwiseParted(records.get(header))) {
            faults.add(place(header + 1, ""), "separator");
            return Table.unread(kind, isOwn);
        }
        Map<Integer, String> columns = columns(records.get(header), header + 1);
        int width = records.get(header).size();
        List<Row.Written> rows = new ArrayList<>();
        for (int i = header + 1; i < records.size(); i++) {
            if (!isEmpty(records.get(i))) {
                rows.add(row(records.get(i), i + 1, width, columns));
            }
        }
        return new Table(kind, isOwn, true, rows);
    }

    private Map<Integer, String> columns(CSVRecord header, int row) {
        Map<Integer, String> columns = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            String name = Names.fold(header.get(i));
            if (columns.containsValue(name)) {
                faults.add(place(row, name), "column.twice", name);
            } else if (kind.columns().contains(name)) {
                columns.put(i, name);
            } else if (!name.isEmpty()) {
                unknownColumn(header.get(i), row);
            }
        }
        return columns;
    }

    private void unknownColumn(String name, int row) {
        Place place = place(row, Quoted.text(name));
        Nearest.of(name, kind.columns())
                .ifPresentOrElse(
                        near -> faults.add(place, "column.near", Quoted.text(name), near),
                        () -> faults.add(place, "column", Quoted.text(name), String.join(", ", kind.columns())));
    }

    private Row.Written row(CSVRecord record, int number, int width, Map<Integer, String> columns) {
        Map<String, String> cells = new HashMap<>();
        for (int i = 0; i < record.size(); i++) {
            String cell = record.get(i).strip();
            if (cell.isEmpty()) {
                continue;
            }
            if (i >= width) {
                faults.add(place(number, ""), "cells", record.size(), width);
                break;
            }
            if (columns.containsKey(i)) {
                cells.put(columns.get(i), cell);
            }
        }
        return new Row.Written(number, cells);
    }

    private boolean isOtherwiseParted(CSVRecord header) {
        return header.size() == 1
                && (header.get(0).contains(";") || header.get(0).contains("\t"));
    }

    private static boolean isEmpty(CSVRecord record) {
        return record.stream().allMatch(String::isBlank);
    }

    private Place place(int row, String column) {
        return new Place(kind.file(), row, column);
    }

    private Optional<String> decoded(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            faults.add(new Place(kind.file(), 0, ""), "utf8", lines(bytes, in.position()));
            return Optional.empty();
        }
        return Optional.of(unmarked(out.flip().toString()));
    }

    /** The line of text that the byte stands in. */
    private static int lines(byte[] bytes, int end) {
        int lines = 1;
        for (int i = 0; i < end; i++) {
            lines += bytes[i] == '\n' ? 1 : 0;
        }
        return lines;
    }
}
