package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.rules.spoilage.FisherExact;
import bandwright.rules.spoilage.Spoilage;
import java.math.BigInteger;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.inference.FisherExactTest;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is learnt of spoiled pieces, beside the same laws in Apache Commons Statistics. */
final class SpoilageAgainstStatisticsTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void intervalsAreThoseOfTheBetaDistribution(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 200; round++) {
            double said = random.nextInt(1, 400) / 1000.0;
            int seen = random.nextInt(Spoilage.ENOUGH, random.nextBoolean() ? 200 : 100_000);
            int spoiled = random.nextInt(0, seen + 1);
            Spoilage.Interval interval = new Spoilage(said, seen, spoiled).interval();
            BetaDistribution beta = BetaDistribution.of(30 * said + spoiled, 30 * (1 - said) + seen - spoiled);
            String sample = "seed " + seed + ": " + spoiled + " of " + seen + " at " + said;
            assertThat(interval.from()).as(sample).isCloseTo(beta.inverseCumulativeProbability(0.025), within(1e-8));
            assertThat(interval.to()).as(sample).isCloseTo(beta.inverseCumulativeProbability(0.975), within(1e-8));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void chancesAreThoseOfFishersTest(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 300; round++) {
            int most = random.nextInt(2, random.nextBoolean() ? 40 : 3000);
            int seen = random.nextInt(1, most);
            int others = random.nextInt(1, most);
            int spoiled = random.nextInt(0, seen + 1);
            int othersSpoiled = random.nextInt(0, others + 1);
            int[][] table = {{spoiled, seen - spoiled}, {othersSpoiled, others - othersSpoiled}};
            boolean isEmptyColumn = spoiled + othersSpoiled == 0 || spoiled + othersSpoiled == seen + others;
            if (isEmptyColumn || hasTwin(seen, spoiled, others, othersSpoiled)) {
                continue; // the library takes no empty column, and misses a table as improbable by its last digit
            }
            assertThat(FisherExact.chance(seen, spoiled, others, othersSpoiled))
                    .as("seed " + seed + ": " + spoiled + " of " + seen + ", " + othersSpoiled + " of " + others)
                    .isCloseTo(FisherExactTest.withDefaults().test(table).getPValue(), within(1e-9));
        }
    }

    /** Whether another table with the same sums is exactly as probable; 6 of 7 and 2 of 3: C(7,6) C(3,2) = C(7,5) C(3,3). */
    private static boolean hasTwin(int seen, int spoiled, int others, int othersSpoiled) {
        int bad = spoiled + othersSpoiled;
        BigInteger found = ways(seen, spoiled).multiply(ways(others, othersSpoiled));
        BigInteger table = ways(seen, Math.max(0, bad - others)).multiply(ways(others, Math.min(others, bad)));
        for (int k = Math.max(0, bad - others); k <= Math.min(seen, bad); k++) {
            if (k != spoiled && table.equals(found)) {
                return true;
            }
            table = table.multiply(BigInteger.valueOf((long) (seen - k) * (bad - k)))
                    .divide(BigInteger.valueOf((k + 1L) * (others - bad + k + 1)));
        }
        return false;
    }

    private static BigInteger ways(int of, int take) {
        BigInteger ways = BigInteger.ONE;
        for (int i = 1; i <= take; i++) {
            ways = ways.multiply(BigInteger.valueOf(of - take + i)).divide(BigInteger.valueOf(i));
        }
        return ways;
    }
}
