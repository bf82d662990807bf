package bandwright.pipeline.held;

import bandwright.rules.table.Names;
import java.util.List;

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

    /** Whether the header is one of ours. */
    public static boolean isOwn(String header) {
        return Names.same(ASK, header) || COLUMNS.stream().anyMatch(own -> Names.same(own, header));
    }
}
