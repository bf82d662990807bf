package bandwright.rules.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
    @Test
    void anInchAndItsSixtyFourthAreExact() {
        // 1 in = 25.4 mm by definition, so 1/64 in = 0.396875 mm.
        assertThat(Length.inches(1)).isEqualTo(Length.mm(25.4));
        Length sum = Length.ZERO;
        for (int i = 1; i <= 64 * 12; i++) {
            sum = sum.plus(Length.inches(1 / 64.0));
            assertThat(sum).isEqualTo(Length.inches(i / 64.0)).isEqualTo(new Length(396_875L * i));
        }
    }

    @Test
    void decimalsAddUpWithoutTheErrorOfDoubles() {
        assertThat(Length.mm(0.1).plus(Length.mm(0.2))).isEqualTo(Length.mm(0.3));
        assertThat(Length.mm(new BigDecimal("250.825"))).isEqualTo(Length.inches(9.875));
        assertThat(Length.mm(new BigDecimal("0.0000005")).nanometres()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "0.005, 0.01",
        "0.004999, 0.00",
        "1.005, 1.01",
        "212.725, 212.73",
        "212.7249, 212.72",
        "95.25, 95.25",
        "-0.005, -0.01",
    })
    void twoDecimalsAreRoundedHalfUp(double mm, String printed) {
        assertThat(Length.mm(mm).mm2().toPlainString()).isEqualTo(printed);
    }

    @Test
    void anEightAndAThreeEighthsInchBandPrintsAsItsMillimetres() {
        // 8 3/8 in = 212.725 mm exactly: as a double it lies below the half.
        assertThat(Length.inches(8.375).mm2()).isEqualByComparingTo("212.73");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void millimetresAndBackIsTheSameLength(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 1000; round++) {
            Length length = new Length(random.nextLong(-3_000_000_000L, 3_000_000_000L));
            assertThat(Length.mm(length.mm())).as("seed %s: %s", seed, length).isEqualTo(length);
            assertThat(Length.inches(length.inches()))
                    .as("seed %s: %s", seed, length)
                    .isEqualTo(length);
            assertThat(length.plus(length.negated())).isEqualTo(Length.ZERO);
        }
    }

    @Test
    void theLongerAndTheShorterAreFound() {
        Length one = Length.mm(1);
        Length two = Length.mm(2);
        assertThat(one.atLeast(two)).isEqualTo(two);
        assertThat(one.atMost(two)).isEqualTo(one);
        assertThat(two.longerThan(one)).isTrue();
        assertThat(two.longerThan(two)).isFalse();
        assertThat(one).isLessThan(two);
        assertThat(two.half()).isEqualTo(one);
    }

    @Test
    void whatIsNoLengthIsRefused() {
        assertThatThrownBy(() -> Length.mm(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Length.mm(1e9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Length.inches(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Length(Long.MAX_VALUE).plus(Length.mm(1))).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void itsTextIsMillimetresWithoutNeedlessZeros() {
        assertThat(Length.inches(9.875)).hasToString("250.825 mm");
        assertThat(Length.mm(100)).hasToString("100 mm");
        assertThat(Length.ZERO).hasToString("0 mm");
    }
}
