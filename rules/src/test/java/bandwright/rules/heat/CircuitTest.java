package bandwright.rules.heat;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CircuitTest {
    /** Where no rule of 80 % exists it is kept all the same, as the stricter one. */
    @ParameterizedTest
    @CsvFileSource(resources = "circuits.csv", numLinesToSkip = 1)
    void aCircuitCarriesFourFifthsForLong(
            double volts, double amperes, int voltAmperes, Integer continuous, String source) {
        int most = new Circuit("wall", volts, amperes, "").mostWatts();
        assertThat(most).as(source).isEqualTo(continuous == null ? voltAmperes * 4 / 5 : continuous);
        assertThat(volts * amperes).isEqualTo(voltAmperes);
    }

    @Test
    void partsOfAWattDontCount() {
        assertThat(new Circuit("wall", 120, 15.5, "").mostWatts()).isEqualTo(1488);
        assertThat(new Circuit("wall", 121, 13, "").mostWatts()).isEqualTo(1258);
    }
}
