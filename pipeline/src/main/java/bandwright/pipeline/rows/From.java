package bandwright.pipeline.rows;

import java.util.Comparator;
import java.util.Optional;

/**
 * Where a row was read.
 *
 * @param file the file's name, as the shop sees it
 * @param sheet empty in CSV
 * @param row as the spreadsheet program shows it; in CSV the record's number, the first being 1
 */
public record From(String file, Optional<String> sheet, int row) implements Comparable<From> {
    private static final Comparator<From> ORDER = Comparator.comparing(From::file)
            .thenComparing(from -> from.sheet().orElse(""))
            .thenComparingInt(From::row);

    @Override
    public int compareTo(From other) {
        return ORDER.compare(this, other);
    }
}
