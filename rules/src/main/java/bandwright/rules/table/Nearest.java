package bandwright.rules.table;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The known name that somebody probably meant: the nearest by edit distance, if it is near at all. */
public final class Nearest {
    private Nearest() {}

    /** The nearest of the known names to what was asked; ties go to the first in the alphabet. */
    public static Optional<String> of(String asked, Collection<String> known) {
        String folded = Names.fold(asked);
        if (folded.isEmpty()) {
            return Optional.empty();
        }
        int near = Math.max(1, folded.length() / 3);
        return known.stream()
                .map(name -> new Near(name, distance(folded, Names.fold(name), near)))
                .filter(n -> n.distance <= near)
                .min(Comparator.comparingInt(Near::distance).thenComparing(Near::name))
                .map(Near::name);
    }

    private record Near(String name, int distance) {}

    /** Edits of one letter, a swap of neighbours counting one (optimal string alignment); above {@code most} any larger number. */
    static int distance(String a, String b, int most) {
        if (Math.abs(a.length() - b.length()) > most) {
            return most + 1;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }

    /** The closed list of a cell, for a sentence: "scissors, trimmer". */
    public static String listed(List<? extends Word> words) {
        return words.stream().map(Word::word).collect(Collectors.joining(", "));
    }
}
