package bandwright.pipeline.held;

import bandwright.pipeline.rows.Row;
import bandwright.rules.table.Names;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What makes a file a held file: three columns that no selling site has. No words of a language, for the reader of such
 * a file looks for them.
 */
public final class HeldFile {
    /** The column that says where a row first was read: file | sheet | row. */
    public static final String FROM = "from";

    /** Behind the columns of the input sheet, in this order. */
    public static final List<String> COLUMNS = List.of("reason", "cure", FROM);

    /** Before them, where a row has a question to the buyer. */
    public static final String ASK = "ask";

    /** The hidden sheet with what a cell's list offers; it orders nothing. */
    public static final String CHOICES = "choices";

    private HeldFile() {}

    /** Whether a sheet with these headers is one of a held file. */
    public static boolean has(List<String> headers) {
        return COLUMNS.stream().allMatch(own -> headers.stream().anyMatch(header -> Names.same(own, header)));
    }

    /** Where a row of a held file first was read: file | sheet | row. Empty for a row of any other file. */
    public static Optional<String> findOrigin(Row row) {
        return findFrom(row.header().texts())
                .map(column -> column < row.cells().size()
                        ? row.cells().get(column).text().strip()
                        : "");
    }

    /** The column {@code from} under a held file's header; empty where the header is another file's. */
    public static Optional<Integer> findFrom(List<String> headers) {
        return has(headers)
                ? IntStream.range(0, headers.size())
                        .filter(column -> Names.same(headers.get(column), FROM))
                        .boxed()
                        .findFirst()
                : Optional.empty();
    }

    /** Whether the header is one of ours. */
    public static boolean isOwn(String header) {
        return Names.same(ASK, header) || COLUMNS.stream().anyMatch(own -> Names.same(own, header));
    }
}
