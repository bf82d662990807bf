package bandwright.rules.colour;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.units.Rgb;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourNameTest {
    @ParameterizedTest
    @CsvSource({
        "255, 255, 255, white",
        "0, 0, 0, black",
        "255, 255, 0, yellow",
        "255, 192, 203, pink",
        "255, 0, 0, red",
        "0, 0, 255, blue",
        "0, 0, 128, dark blue",
        "0, 128, 0, green",
        "191, 216, 230, pale blue",
        "247, 238, 219, cream",
        "150, 150, 150, grey",
        "255, 140, 0, orange",
        "32, 32, 36, black",
        "246, 245, 242, white",
    })
    void coloursGoByTheirPlainNames(int red, int green, int blue, String name) {
        assertThat(ColourName.of(new Rgb(red, green, blue))).isEqualTo(name);
    }
}
