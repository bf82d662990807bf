package bandwright.pipeline.intake;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
    @ParameterizedTest
    @CsvSource({"3, 3", "3.0, 3", "3.00, 3", "03, 3", "500, 500"})
    void wholeNumbersAreRead(String text, int quantity) {
        assertThat(Quantity.parse(text, '.', 500)).hasValue(quantity);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "0", "0.0", "-1", "2.5", "501", "1,000", "two", "3 pcs", "1e2", "99999999999", "٣", "3,0"})
    void othersAreUnclear(String text) {
        assertThat(Quantity.parse(text, '.', 500)).isEmpty();
    }

    @Test
    void theDecimalSignIsTheSites() {
        assertThat(Quantity.parse("3,0", ',', 500)).hasValue(3);
        assertThat(Quantity.parse("3", ',', 500)).hasValue(3);
        assertThat(Quantity.parse("1.000", ',', 5000)).isEmpty();
        assertThat(Quantity.parse("2,5", ',', 500)).isEmpty();
    }
}
