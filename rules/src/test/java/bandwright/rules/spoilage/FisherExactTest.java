package bandwright.rules.spoilage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FisherExactTest {
    @ParameterizedTest
    @CsvSource({
        // Fisher, The Design of Experiments (1935), chapter 2: eight cups of tea, three of four named rightly. 34/70.
        "4, 3, 4, 1, 0.485714",
        // All four named rightly: twice 1/70.
        "4, 4, 4, 0, 0.028571",
        // Fisher, Statistical Methods for Research Workers, 21.02: convictions of twins, 10 of 13 and 2 of 17; the
        // two-sided figure from memory of a worked example, and checked against a statistics library elsewhere.
        "13, 10, 17, 2, 0.0005367",
        // Two tables exactly as probable, 21 of 45 ways each, and one of 3 ways: by counting.
        "7, 6, 3, 2, 1",
        // By counting in exact fractions, in another language.
        "60, 6, 60, 2, 0.2721629",
        // Nothing spoiled, or everything: no table but this one.
        "60, 0, 60, 0, 1",
        "5, 5, 7, 7, 1",
        "0, 0, 7, 3, 1",
    })
    void publishedTablesHaveTheirChances(int seen, int spoiled, int others, int othersSpoiled, double chance) {
        assertThat(FisherExact.chance(seen, spoiled, others, othersSpoiled)).isCloseTo(chance, within(5e-7));
        assertThat(FisherExact.chance(others, othersSpoiled, seen, spoiled))
                .as("whichever comes first")
                .isCloseTo(chance, within(5e-7));
    }

    @Test
    void sixOfSixtyAndTwoOfSixtyAreNotYetCertain() {
        assertThat(FisherExact.chance(60, 6, 60, 2)).isBetween(0.25, 0.30).isGreaterThan(FisherExact.CERTAIN);
        assertThat(FisherExact.chance(600, 60, 600, 20)).isLessThan(FisherExact.CERTAIN);
    }

    @Test
    void manyPiecesDoNotOverflow() {
        assertThat(FisherExact.chance(100_000, 3_000, 100_000, 3_010)).isBetween(0.8, 1.0);
        assertThat(FisherExact.chance(100_000, 3_000, 100_000, 6_000)).isLessThan(1e-100);
    }

    @Test
    void moreSpoiledThanMadeIsRefused() {
        assertThatThrownBy(() -> FisherExact.chance(3, 4, 3, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
