package bandwright.rules.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.rules.units.Rgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Light and Lab of sRGB colours against published values; their sources stand in the table. */
class LabTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/bandwright/colour/srgb-lab.csv", useHeadersInDisplayName = true)
    void lightAndLabAreThePublishedOnes(ArgumentsAccessor row) {
        Rgb colour = new Rgb(row.getInteger(1), row.getInteger(2), row.getInteger(3));
        assertThat(LinearLight.of(colour.red())).isCloseTo(row.getDouble(4), within(5.1e-7));
        assertThat(LinearLight.of(colour.green())).isCloseTo(row.getDouble(5), within(5.1e-7));
        assertThat(LinearLight.of(colour.blue())).isCloseTo(row.getDouble(6), within(5.1e-7));
        Lab lab = Lab.of(colour);
        assertThat(lab.l()).isCloseTo(row.getDouble(7), within(1e-4));
        assertThat(lab.a()).isCloseTo(row.getDouble(8), within(1e-4));
        assertThat(lab.b()).isCloseTo(row.getDouble(9), within(1e-4));
    }

    @Test
    void whiteIsExactlyAHundred() {
        assertThat(Lab.of(Rgb.WHITE)).isEqualTo(new Lab(100, 0, 0));
    }

    @Test
    void greysHaveNoColour() {
        for (int grey = 0; grey < 256; grey++) {
            Lab lab = Lab.of(new Rgb(grey, grey, grey));
            assertThat(lab.a()).as("grey %d", grey).isCloseTo(0, within(1e-9));
            assertThat(lab.b()).as("grey %d", grey).isCloseTo(0, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0.214041"})
    void aValueBetweenBytesDecodesAsComputed(double value, double light) {
        assertThat(LinearLight.decoded(value)).isCloseTo(light, within(5.1e-7));
    }

    @ParameterizedTest
    @CsvSource({"0.18, 0.461356, 118", "0.5, 0.735357, 188"})
    void lightEncodesAsComputed(double light, double value, int channel) {
        assertThat(LinearLight.encoded(light)).isCloseTo(value, within(5.1e-7));
        assertThat(LinearLight.channel(light)).isEqualTo(channel);
    }

    @Test
    void everyChannelComesBackFromItsLight() {
        for (int channel = 0; channel < 256; channel++) {
            assertThat(LinearLight.channel(LinearLight.of(channel))).isEqualTo(channel);
        }
    }
}
