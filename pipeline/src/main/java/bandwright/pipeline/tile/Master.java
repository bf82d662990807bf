package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.List;

/**
 * How many sheets of each known layout make all copies with the fewest sheets, parts of sheets allowed: min sum x over
 * layouts, with at least the copies of every kind. The revised simplex method with an explicit inverse; the steepest
 * reduced cost enters and ties go by number, so that the same layouts give the same answer.
 */
final class Master {
    private static final double EPS = 1e-9;
    private final int kinds;
    private final List<int[]> columns = new ArrayList<>();
    private final double[][] inverse;
    private final int[] basis;
    private final double[] amount;

    /** Starts with a column for each kind that holds nothing else. */
    Master(int[] copies, List<int[]> starts) {
        kinds = copies.length;
        columns.addAll(starts);
        inverse = new double[kinds][kinds];
        basis = new int[kinds];
        amount = new double[kinds];
        for (int k = 0; k < kinds; k++) {
            inverse[k][k] = 1.0 / starts.get(k)[k];
            basis[k] = k;
            amount[k] = copies[k] * inverse[k][k];
        }
    }

    void add(int[] column) {
        columns.add(column);
    }

    /** What one more copy of each kind would cost in sheets. */
    double[] prices() {
        double[] prices = new double[kinds];
        for (int i = 0; i < kinds; i++) {
            if (basis[i] >= 0) {
                for (int k = 0; k < kinds; k++) {
                    prices[k] += inverse[i][k];
                }
            }
        }
        return prices;
    }

    double sheets() {
        double sum = 0;
        for (int i = 0; i < kinds; i++) {
            sum += basis[i] >= 0 ? amount[i] : 0;
        }
        return sum;
    }

    /** Sheets of each column. */
    double[] amounts() {
        double[] amounts = new double[columns.size()];
        for (int i = 0; i < kinds; i++) {
            if (basis[i] >= 0) {
                amounts[basis[i]] = Math.max(0, amount[i]);
            }
        }
        return amounts;
    }

    /** Returns how many pivots it took; gives up after many, which leaves a usable if not the best answer. */
    int solve() {
        int most = 50 * (kinds + 20);
        for (int pivots = 0; pivots < most; pivots++) {
            double[] prices = prices();
            int enters = entering(prices);
            if (enters == NONE || !pivot(enters)) {
                return pivots;
            }
        }
        return most;
    }

    private static final int NONE = Integer.MIN_VALUE;

    /** A column's number; -1 - k for a copy too many of kind k, which costs nothing. */
    private int entering(double[] prices) {
        int best = NONE;
        double least = -1e-7;
        for (int c = 0; c < columns.size(); c++) {
            double reduced = 1;
            int[] column = columns.get(c);
            for (int k = 0; k < kinds; k++) {
                reduced -= column[k] == 0 ? 0 : prices[k] * column[k];
            }
            if (reduced < least) {
                least = reduced;
                best = c;
            }
        }
        for (int k = 0; k < kinds; k++) {
            if (prices[k] < least) {
                least = prices[k];
                best = -1 - k;
            }
        }
        return best;
    }

    private boolean pivot(int enters) {
        double[] column = new double[kinds];
        for (int i = 0; i < kinds; i++) {
            if (enters < 0) {
                column[i] = -inverse[i][-1 - enters];
                continue;
            }
            int[] counts = columns.get(enters);
            for (int k = 0; k < kinds; k++) {
                column[i] += counts[k] == 0 ? 0 : inverse[i][k] * counts[k];
            }
        }
        int leaves = leaving(column);
        if (leaves < 0) {
            return false;
        }
        double pivot = column[leaves];
        for (int k = 0; k < kinds; k++) {
            inverse[leaves][k] /= pivot;
        }
        amount[leaves] /= pivot;
        for (int i = 0; i < kinds; i++) {
            if (i != leaves && Math.abs(column[i]) > 1e-14) {
                for (int k = 0; k < kinds; k++) {
                    inverse[i][k] -= column[i] * inverse[leaves][k];
                }
                amount[i] -= column[i] * amount[leaves];
            }
        }
        basis[leaves] = enters;
        return true;
    }

    private int leaving(double[] column) {
        int leaves = -1;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < kinds; i++) {
            if (column[i] > EPS) {
                double ratio = Math.max(0, amount[i]) / column[i];
                boolean tied = leaves >= 0 && Math.abs(ratio - least) <= EPS;
                if (leaves < 0 || ratio < least - EPS || (tied && basis[i] < basis[leaves])) {
                    least = ratio;
                    leaves = i;
                }
            }
        }
        return leaves;
    }
}
