package bandwright.pipeline.type;

import bandwright.pipeline.type.Breaks.Piece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Parts a text into so many lines that the longest is as short as can be, so that type is largest; of all such ways the
 * most even one is taken: words of the widths 8, 2, 2, 2 and 2 in three lines stand as 8, 4 and 4, not as 8, 6 and 2.
 */
final class Lines {
    /** Widths that differ by rounding only are equal. */
    private static final double SAME = 1e-6;

    private final List<Piece> pieces;
    private final double[] widths;
    private final double space;

    /**
     * @param widths of the pieces
     * @param space the width of a space
     */
    Lines(List<Piece> pieces, double[] widths, double space) {
        this.pieces = pieces;
        this.widths = widths;
        this.space = space;
    }

    /** @param count of lines, at most as many as pieces */
    List<String> balanced(int count) {
        int n = pieces.size();
        int[][] cut = new int[count + 1][n + 1];
        double longest = cut(cut, Double.MAX_VALUE, false);
        cut(cut, longest * (1 + SAME), true);
        List<String> lines = new ArrayList<>();
        int end = n;
        for (int line = count; line > 0; line--) {
            int start = cut[line][end];
            lines.add(0, text(start, end));
            end = start;
        }
        return lines;
    }

    /**
     * Cuts the pieces into lines none of which is longer than allowed.
     *
     * @param cut where each number of lines of the first pieces is best cut last
     * @return what the best way costs
     */
    private double cut(int[][] cut, double allowed, boolean isEven) {
        int n = pieces.size();
        double[][] best = new double[cut.length][n + 1];
        for (double[] row : best) {
            Arrays.fill(row, Double.MAX_VALUE);
        }
        best[0][0] = 0;
        for (int line = 1; line < cut.length; line++) {
            for (int end = line; end <= n; end++) {
                double width = widths[end - 1];
                for (int start = end - 1; start >= line - 1 && width <= allowed; start--) {
                    double cost = joined(best[line - 1][start], width, isEven);
                    if (cost < best[line][end]) {
                        best[line][end] = cost;
                        cut[line][end] = start;
                    }
                    width += start > 0
                            ? widths[start - 1] + (pieces.get(start - 1).isSpaced() ? space : 0)
                            : 0;
                }
            }
        }
        return best[cut.length - 1][n];
    }

    /** With a line more: the longest of them, or the sum of their squares, which is least when they are alike. */
    private static double joined(double before, double width, boolean isEven) {
        return isEven ? before + width * width : Math.max(before, width);
    }

    private String text(int start, int end) {
        StringBuilder text = new StringBuilder();
        for (int i = start; i < end; i++) {
            text.append(pieces.get(i).text());
            text.append(i < end - 1 && pieces.get(i).isSpaced() ? " " : "");
        }
        return text.toString();
    }
}
