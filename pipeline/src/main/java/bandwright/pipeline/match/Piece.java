package bandwright.pipeline.match;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * One physical thing that a row orders.
 *
 * @param number counted from 1 over the row's whole set
 * @param texts by field of its design, as ordered; a field without a text is absent
 */
public record Piece(int number, SortedMap<String, String> texts) {
    public Piece {
        texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
    }

    /** Pieces 1 to {@code count}, with the same texts. */
    public static List<Piece> alike(int count, SortedMap<String, String> texts) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> new Piece(number, texts))
                .toList();
    }
}
