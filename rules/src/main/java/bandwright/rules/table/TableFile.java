package bandwright.rules.table;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;

/**
 * Where a table is written, and in which order its columns stand there: what a person needs who adds a row by hand.
 *
 * @param own the file in the shop's folder; empty = the table is the built-in one
 * @param header the names of its columns
 */
public record TableFile(Optional<Path> own, List<String> header) {
    public TableFile {
        header = List.copyOf(header);
    }

    /** A row as it is typed into that file; a cell whose column the file doesn't have is lost. */
    public String row(Map<String, String> cells) {
        return header.stream()
                .map(column -> cells.getOrDefault(Names.fold(column), ""))
                // Alone, as the library puts an empty first cell in quotes.
                .map(cell -> cell.isEmpty() ? "" : CSVFormat.RFC4180.format(cell))
                .collect(Collectors.joining(","));
    }

    /** The columns that its row would need and the file doesn't have. */
    public List<String> missing(Map<String, String> cells) {
        return cells.entrySet().stream()
                .filter(cell -> !cell.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .filter(column -> header.stream().noneMatch(name -> Names.same(name, column)))
                .toList();
    }
}
