package bandwright.rules.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemperatureTest {
    @ParameterizedTest
    @CsvSource({"0, 32", "100, 212", "-40, -40", "190, 374", "180, 356", "205, 401"})
    void theTwoScalesMeetWhereTheyAreDefinedToMeet(double celsius, double fahrenheit) {
        assertThat(Temperature.celsius(celsius).fahrenheit()).isCloseTo(fahrenheit, within(1e-9));
        assertThat(Temperature.fahrenheit(fahrenheit).celsius()).isCloseTo(celsius, within(1e-9));
    }

    @Test
    void aFahrenheitFigureComesBackWholeAndIsGivenInTenthsOfADegreeCelsius() {
        for (int degrees = 32; degrees <= 600; degrees++) {
            assertThat(Temperature.fahrenheit(degrees).wholeFahrenheit()).isEqualTo(degrees);
        }
        assertThat(Temperature.fahrenheit(375).celsius1()).isEqualByComparingTo("190.6");
        assertThat(Temperature.fahrenheit(375).wholeCelsius()).isEqualTo(191);
        assertThat(Temperature.celsius(190.25).celsius1()).isEqualByComparingTo("190.3");
    }

    @Test
    void whatIsNoTemperatureIsRefused() {
        assertThatThrownBy(() -> Temperature.celsius(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Temperature.celsius(-300)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Temperature.fahrenheit(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
