package bandwright.rules.spoilage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class BetaTest {
    /** Beta(2, 3): 6 x^2 - 8 x^3 + 3 x^4, worked out by hand from the density 12 x (1 - x)^2. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0.1, 0.0523", "0.25, 0.26171875", "0.5, 0.6875", "0.9, 0.9963", "1, 1"})
    void aPolynomialWhereTheFiguresAreWhole(double x, double below) {
        assertThat(new Beta(2, 3).below(x)).isCloseTo(below, within(1e-14));
    }

    /** Beta(1, n) lies below x with 1 - (1 - x)^n, Beta(n, 1) with x^n. */
    @ParameterizedTest
    @CsvSource({"1, 0.3", "30, 0.05", "250.5, 0.001", "250.5, 0.02", "0.5, 0.7"})
    void aPowerWhereOneFigureIsOne(double n, double x) {
        assertThat(new Beta(1, n).below(x)).isCloseTo(1 - Math.pow(1 - x, n), within(1e-13));
        assertThat(new Beta(n, 1).below(1 - x)).isCloseTo(Math.pow(1 - x, n), within(1e-13));
    }

    /**
     * Exact limits of a share after 4 of 20 (Clopper and Pearson), 90 %, as in the NIST/SEMATECH e-Handbook of Statistical
     * Methods, 7.2.4.2 (its figures from memory, found in a
     * spreadsheet by trying, so five digits count): they are points of Beta(4, 17) and Beta(5, 16).
     */
    @Test
    void theExactLimitsOfFourOfTwenty() {
        assertThat(new Beta(4, 17).quantile(0.05)).isCloseTo(0.071354, within(1e-5));
        assertThat(new Beta(5, 16).quantile(0.95)).isCloseTo(0.401029, within(1e-5));
        // The same two equations of binomial sums, solved by halving in another language.
        assertThat(new Beta(4, 17).quantile(0.05)).isCloseTo(0.07135388430861817, within(1e-12));
        assertThat(new Beta(5, 16).quantile(0.95)).isCloseTo(0.40102811733197463, within(1e-12));
    }

    @Test
    void aFigureOfZeroOrLessIsRefused() {
        assertThatThrownBy(() -> new Beta(0, 30)).isInstanceOf(IllegalArgumentException.class);
    }
}
