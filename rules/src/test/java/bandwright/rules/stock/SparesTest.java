package bandwright.rules.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bandwright.rules.spoilage.Spoilage;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SparesTest {
    @ParameterizedTest
    @CsvSource({
        // pieces, rate, spares: worked in exact fractions from the definition
        "1, 0.03, 0",
        "10, 0.03, 1",
        "40, 0.03, 3",
        "60, 0.03, 4",
        "100, 0.03, 6",
        "1, 0.5, 4",
        "400, 0.001, 2",
        // large ones against the 95 % point of the negative binomial distribution in SciPy (stats.nbinom.ppf)
        "10000, 0.03, 339",
        "100000, 0.03, 3186",
        "100000, 0.5, 100736",
        "100000, 0.9, 904940",
    })
    void theSparesDoOnNineteenDaysOfTwenty(int pieces, double rate, int spares) {
        assertThat(spares(pieces, rate)).isEqualTo(spares);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void oneSpareFewerWouldNotDo(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 20; round++) {
            int pieces = random.nextInt(1, 150);
            double rate = random.nextInt(1, 300) / 1000.0;
            int spares = spares(pieces, rate);
            String sample = "seed " + seed + ": " + pieces + " pieces at " + rate;
            assertThat(goodEnough(pieces, spares, rate)).as(sample).isGreaterThanOrEqualTo(new BigDecimal("0.95"));
            if (spares > 0) {
                assertThat(goodEnough(pieces, spares - 1, rate)).as(sample).isLessThan(new BigDecimal("0.95"));
            }
        }
    }

    /** P(at most s spoiled of n + s) by the binomial sum itself, in forty digits. */
    private static BigDecimal goodEnough(int pieces, int spares, double rate) {
        BigDecimal p = BigDecimal.valueOf(rate);
        BigDecimal q = BigDecimal.ONE.subtract(p);
        int all = pieces + spares;
        BigDecimal sum = BigDecimal.ZERO;
        BigInteger ways = BigInteger.ONE;
        for (int k = 0; k <= spares; k++) {
            sum = sum.add(new BigDecimal(ways).multiply(p.pow(k)).multiply(q.pow(all - k)), new MathContext(40));
            ways = ways.multiply(BigInteger.valueOf(all - k)).divide(BigInteger.valueOf(k + 1L));
        }
        return sum;
    }

    @Test
    void nothingToMakeOrNothingEverSpoiledNeedsNoSpare() {
        assertThat(spares(0, 0.03)).isZero();
        assertThat(spares(100_000, 0)).isZero();
    }

    @Test
    void aPressThatRuinsEverythingStillHasAnAnswer() {
        assertThat(spares(10, 1)).isEqualTo(spares(10, 0.9)).isGreaterThan(90);
    }

    @Test
    void whatIsNoShareIsRefused() {
        assertThatThrownBy(() -> spares(10, 1.2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> spares(10, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> spares(-1, 0.03)).isInstanceOf(IllegalArgumentException.class);
    }

    private static int spares(int pieces, double rate) {
        return Spares.of(List.of(new Spares.Lot(pieces, Spoilage.asSaid(rate))));
    }
}
