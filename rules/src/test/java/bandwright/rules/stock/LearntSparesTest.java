package bandwright.rules.stock;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.spoilage.Spoilage;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Spares where the shop's own pieces speak, and where several heat sources share them. */
final class LearntSparesTest {
    private static final MathContext FORTY = new MathContext(40);

    /** Worked out from the beta-binomial distribution in exact fractions, in another language; at 3 % unlearnt 10 take 1, 40 take 3. */
    @ParameterizedTest
    @CsvSource({"10, 120, 4, 2", "40, 120, 4, 4", "40, 1200, 36, 3", "40, 30, 0, 3", "40, 30, 6, 11", "100, 500, 50, 17"
    })
    void sparesFollowWhatWasSpoiled(int pieces, int seen, int spoiled, int spares) {
        assertThat(Spares.of(List.of(new Spares.Lot(pieces, new Spoilage(0.03, seen, spoiled)))))
                .isEqualTo(spares);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void oneSpareFewerWouldNotDo(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 15; round++) {
            int pieces = random.nextInt(1, 80);
            int seen = random.nextInt(30, 300);
            int spoiled = random.nextInt(0, seen / 3);
            int spares = Spares.of(List.of(new Spares.Lot(pieces, new Spoilage(0.03, seen, spoiled))));
            String sample = "seed " + seed + ": " + pieces + " pieces after " + spoiled + " of " + seen;
            assertThat(goodEnough(pieces, spares, seen, spoiled))
                    .as(sample)
                    .isGreaterThanOrEqualTo(new BigDecimal("0.95"));
            if (spares > 0) {
                assertThat(goodEnough(pieces, spares - 1, seen, spoiled))
                        .as(sample)
                        .isLessThan(new BigDecimal("0.95"));
            }
        }
    }

    /** P(at most s spoiled of n + s) by the beta-binomial sum itself: C(N, k) B(a + k, b + N - k) / B(a, b), in forty digits. */
    private static BigDecimal goodEnough(int pieces, int spares, int seen, int spoiled) {
        BigDecimal a = new BigDecimal("0.9").add(BigDecimal.valueOf(spoiled));
        BigDecimal b = new BigDecimal("29.1").add(BigDecimal.valueOf(seen - spoiled));
        int all = pieces + spares;
        BigDecimal sum = BigDecimal.ZERO;
        for (int k = 0; k <= spares; k++) {
            BigDecimal term = BigDecimal.ONE;
            for (int i = 0; i < k; i++) {
                term = term.multiply(BigDecimal.valueOf(all - i)).divide(BigDecimal.valueOf(i + 1L), FORTY);
            }
            term = term.multiply(rising(a, k)).multiply(rising(b, all - k));
            sum = sum.add(term.divide(rising(a.add(b), all), FORTY), FORTY);
        }
        return sum;
    }

    private static BigDecimal rising(BigDecimal from, int count) {
        BigDecimal product = BigDecimal.ONE;
        for (int i = 0; i < count; i++) {
            product = product.multiply(from.add(BigDecimal.valueOf(i)), FORTY);
        }
        return product;
    }

    @Test
    void heatSourcesOfWhichNothingIsLearntAreOneLot() {
        Spoilage said = Spoilage.asSaid(0.03);
        assertThat(Spares.of(List.of(new Spares.Lot(25, said), new Spares.Lot(15, said))))
                .isEqualTo(3);
        assertThat(Spares.of(List.of(new Spares.Lot(0, said), new Spares.Lot(40, new Spoilage(0.03, 12, 3)))))
                .isEqualTo(3);
    }

    /** Two kinds of heat source at known rates of 5 and 20 %, by adding up every pair of counts. */
    @ParameterizedTest
    @CsvSource({"10, 10", "1, 30", "25, 4", "60, 60"})
    void sharedSparesAreFewerThanEachOnesOwn(int some, int others) {
        Spoilage rare = Spoilage.asSaid(0.05);
        Spoilage frequent = Spoilage.asSaid(0.20);
        int spares = Spares.of(List.of(new Spares.Lot(some, rare), new Spares.Lot(others, frequent)));
        assertThat(pairs(some, 0.05, others, 0.20, spares)).isGreaterThanOrEqualTo(0.95);
        assertThat(pairs(some, 0.05, others, 0.20, spares - 1)).isLessThan(0.95);
        assertThat(spares)
                .isLessThanOrEqualTo(Spares.of(List.of(new Spares.Lot(some, rare)))
                        + Spares.of(List.of(new Spares.Lot(others, frequent))));
    }

    private static double pairs(int some, double rate, int others, double othersRate, int most) {
        double sum = 0;
        for (int i = 0; i <= most; i++) {
            for (int k = 0; i + k <= most; k++) {
                sum += waiting(some, rate, i) * waiting(others, othersRate, k);
            }
        }
        return sum;
    }

    /** C(n - 1 + k, k) p^k (1 - p)^n. */
    private static double waiting(int n, double p, int k) {
        double ways = 1;
        for (int i = 1; i <= k; i++) {
            ways *= (n - 1.0 + i) / i;
        }
        return ways * Math.pow(p, k) * Math.pow(1 - p, n);
    }

    @Test
    void twoHeatSourcesWithTheSameRecordAreStillTwo() {
        Spares.Lot lot = new Spares.Lot(50, new Spoilage(0.03, 40, 4));
        int shared = Spares.of(List.of(lot, lot));
        int oneSource = Spares.of(List.of(new Spares.Lot(100, new Spoilage(0.03, 40, 4))));
        assertThat(shared).as("both being bad at once is less likely").isLessThan(oneSource);
    }

    @Test
    void aRunOfTensOfThousandsEndsToo() {
        Spares.Lot good = new Spares.Lot(50_000, new Spoilage(0.03, 100, 50));
        Spares.Lot bad = new Spares.Lot(50_000, new Spoilage(0.9, 40, 39));
        assertThat(Spares.of(List.of(good, bad))).isGreaterThan(50_000);
    }
}
