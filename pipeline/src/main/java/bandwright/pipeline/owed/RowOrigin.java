package bandwright.pipeline.owed;

import bandwright.pipeline.held.HeldFile;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Row;
import java.util.SortedMap;

/** What is remembered of a row, so that it is known again. */
public final class RowOrigin {
    private RowOrigin() {}

    /** file | sheet | row; of a held file's row, where it first was read. */
    public static String of(Row row) {
        return HeldFile.findOrigin(row).filter(origin -> !origin.isEmpty()).orElseGet(() -> {
            From from = row.from();
            return from.file() + " | " + from.sheet().orElse("") + " | " + from.row();
        });
    }

    /** A digest of what it orders. */
    public static String content(Row row) {
        return RowContent.of(row);
    }

    /** What a piece is, for a person: MUG-11-W, tern, name: Ada. */
    public static String words(MatchedLine line, SortedMap<String, String> texts) {
        return Slot.words(line, texts);
    }
}
