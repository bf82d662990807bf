package bandwright.rules.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.rules.units.Rgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContrastTest {
    private static final Rgb BLACK = new Rgb(0, 0, 0);

    @Test
    void blackOnWhiteIsTwentyOneToOneAndAColourOnItselfOneToOne() {
        assertThat(Contrast.ratio(BLACK, Rgb.WHITE)).isCloseTo(21, within(1e-12));
        assertThat(Contrast.ratio(Rgb.WHITE, BLACK)).isCloseTo(21, within(1e-12));
        assertThat(Contrast.ratio(new Rgb(200, 30, 90), new Rgb(200, 30, 90))).isEqualTo(1);
    }

    /** The figures that guides to WCAG 2.x print for colours on white, to two decimals; recomputed from its formula. */
    @ParameterizedTest
    @CsvSource({
        "118, 118, 118, 4.54", // #767676, the lightest grey for text
        "119, 119, 119, 4.48", // #777777, just too light
        "255, 0, 0, 4.00",
        "0, 0, 255, 8.59",
        "0, 128, 0, 5.14",
        "255, 255, 0, 1.07",
    })
    void coloursStandOutFromWhiteAsTheGuidelinesHaveIt(int red, int green, int blue, double ratio) {
        assertThat(Contrast.ratio(new Rgb(red, green, blue), Rgb.WHITE)).isCloseTo(ratio, within(0.005));
    }
}
