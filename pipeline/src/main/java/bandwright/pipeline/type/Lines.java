package bandwright.pipeline.type;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Breaks words into so many lines that the longest is as short as can be: lines look balanced, and type is largest. */
final class Lines {
    private Lines() {}

    /**
     * @param widths of the words
     * @param space the width of a space
     * @param count of lines, at most as many as words
     */
    static List<String> balanced(List<String> words, double[] widths, double space, int count) {
        int n = words.size();
        double[][] best = new double[count + 1][n + 1];
        int[][] cut = new int[count + 1][n + 1];
        for (double[] row : best) {
            Arrays.fill(row, Double.MAX_VALUE);
        }
        best[0][0] = 0;
        for (int line = 1; line <= count; line++) {
            for (int end = line; end <= n; end++) {
                double width = -space;
                for (int start = end - 1; start >= line - 1; start--) {
                    width += widths[start] + space;
                    double longest = Math.max(width, best[line - 1][start]);
                    if (longest < best[line][end]) {
                        best[line][end] = longest;
                        cut[line][end] = start;
                    }
                }
            }
        }
        List<String> lines = new ArrayList<>();
        int end = n;
        for (int line = count; line > 0; line--) {
            int start = cut[line][end];
            lines.add(0, String.join(" ", words.subList(start, end)));
            end = start;
        }
        return lines;
    }
}
