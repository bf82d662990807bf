package bandwright.rules.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NaturalOrderTest {
    @ParameterizedTest
    @CsvSource({
        "A2, A10",
        "Q9, Q1042",
        "q9, Q10",
        "shelf 2 b, shelf 10 a",
        "9, 10",
        "98765432109876543209, 98765432109876543210",
        "A, A1",
        "7b, 007c",
        "A10, B2",
        "A009, A10",
        "A07x, A8",
        "Q12 z, Q13 a",
    })
    void numbersInsideNamesCountByTheirValue(String first, String second) {
        assertThat(NaturalOrder.INSTANCE.compare(first, second)).isNegative();
        assertThat(NaturalOrder.INSTANCE.compare(second, first)).isPositive();
    }

    @Test
    void namesThatDifferAreNeverEqual() {
        assertThat(NaturalOrder.INSTANCE.compare("07", "7")).isNotZero();
        assertThat(NaturalOrder.INSTANCE.compare("q1", "Q1")).isNotZero();
        assertThat(NaturalOrder.INSTANCE.compare("Q1", "Q1")).isZero();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void anyNamesCanBeSorted(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> names = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            StringBuilder name = new StringBuilder();
            for (int c = random.nextInt(6); c > 0; c--) {
                name.append("0019aAbB- ".charAt(random.nextInt(10)));
            }
            names.add(name.toString());
        }
        names.sort(NaturalOrder.INSTANCE);
        for (int i = 0; i + 7 < names.size(); i++) {
            assertThat(NaturalOrder.INSTANCE.compare(names.get(i), names.get(i + 7)))
                    .as("seed %d: %s before %s", seed, names.get(i), names.get(i + 7))
                    .isNotPositive();
        }
    }
}
