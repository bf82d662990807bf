package bandwright.pipeline.write.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CentsTest {
    @Test
    void theCentThatIsMissingGoesToWhatLostMost() {
        assertThat(Cents.of(List.of(0.333, 0.333, 0.334))).containsExactly(cents("0.33"), cents("0.33"), cents("0.34"));
        assertThat(Cents.of(List.of(0.005, 0.005, 0.005, 0.005)))
                .as("of equals the first")
                .containsExactly(cents("0.01"), cents("0.01"), cents("0.00"), cents("0.00"));
        assertThat(Cents.of(List.of(2.00, 0.20, 0.0, 0.06804)))
                .containsExactly(cents("2.00"), cents("0.20"), cents("0.00"), cents("0.07"));
    }

    @Test
    void whatADoubleBlursIsNoCent() {
        assertThat(Cents.of(List.of(0.1 + 0.2, 1.1 * 3))).containsExactly(cents("0.30"), cents("3.30"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theSumIsTheSumAndNoPartIsACentOff(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 200; round++) {
            List<Double> parts = new ArrayList<>();
            BigDecimal exact = BigDecimal.ZERO;
            for (int i = random.nextInt(1, 7); i > 0; i--) {
                BigDecimal part = BigDecimal.valueOf(random.nextInt(0, 10_000_000), 5);
                parts.add(part.doubleValue());
                exact = exact.add(part);
            }
            List<BigDecimal> cents = Cents.of(parts);
            assertThat(Cents.sum(cents)).as("seed " + seed).isEqualTo(exact.setScale(2, RoundingMode.HALF_UP));
            for (int i = 0; i < parts.size(); i++) {
                assertThat(cents.get(i).doubleValue() - parts.get(i)).isBetween(-0.01, 0.01);
            }
        }
    }

    private static BigDecimal cents(String amount) {
        return new BigDecimal(amount);
    }
}
