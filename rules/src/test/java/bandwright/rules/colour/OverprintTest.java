package bandwright.rules.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.rules.units.Rgb;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dye on a base: worked values of the law of Beer and Lambert, and what must hold whatever is printed on whatever. */
class OverprintTest {
    private static final Rgb PINK = new Rgb(245, 182, 200);

    /**
     * Reflectances of ink on white, of white and of the bare base; formula of textbooks, values computed from it. Kubelka's
     * film without scattering (J. Opt. Soc. Am. 38:448, 1948) is the fifth: on white it throws back exp(-2 K X).
     */
    @ParameterizedTest
    @CsvSource({
        "0.10, 0.85, 0.40, 0.047059",
        "0.85, 0.85, 0.40, 0.400000", // no ink
        "0.10, 0.85, 0.85, 0.100000", // white base
        "0.60, 0.90, 0.05, 0.033333", // nearly black base
        "0.135335, 1, 0.80, 0.108268", // K 1, X 1
    })
    void lightIsMultiplied(double ink, double white, double base, double expected) {
        double relative = Overprint.light(ink / white, base / white) * white;
        assertThat(relative).isCloseTo(expected, within(1e-6));
    }

    @Test
    void densitiesAdd() {
        double density = -Math.log10(Overprint.light(0.10 / 0.85, 0.40));
        assertThat(density).isCloseTo(1.327359, within(1e-6));
    }

    @Test
    void yellowOnPinkIsOrange() {
        assertThat(Overprint.on(PINK).of(new Rgb(255, 255, 0))).isEqualTo(new Rgb(245, 182, 0));
    }

    @Test
    void greyOnGreyIsMultipliedAsLightAndNotAsBytes() {
        // 0.215861 squared is 0.046596, which is 61 of 255; bytes would give 64.
        Rgb grey = new Rgb(128, 128, 128);
        assertThat(Overprint.on(grey).of(grey)).isEqualTo(new Rgb(61, 61, 61));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void noInkIsTheBaseAndAWhiteBaseIsTheInk(long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        for (int i = 0; i < 300; i++) {
            Rgb colour = colour(dice);
            assertThat(Overprint.on(colour).of(Rgb.WHITE)).as("seed %d", seed).isEqualTo(colour);
            assertThat(Overprint.on(Rgb.WHITE).of(colour)).as("seed %d", seed).isEqualTo(colour);
            assertThat(Overprint.on(Rgb.WHITE).lab(colour)).as("seed %d", seed).isEqualTo(Lab.of(colour));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void nothingIsLighterThanItsBaseAndMoreInkIsNeverLighter(long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        for (int i = 0; i < 300; i++) {
            Rgb base = colour(dice);
            Rgb ink = colour(dice);
            Rgb more = new Rgb(less(dice, ink.red()), less(dice, ink.green()), less(dice, ink.blue()));
            Rgb seen = Overprint.on(base).of(ink);
            String told = "seed " + seed + ": " + ink + " on " + base;
            assertThat(isNeverLighter(seen, base)).as(told).isTrue();
            assertThat(isNeverLighter(seen, ink)).as(told).isTrue();
            assertThat(isNeverLighter(Overprint.on(base).of(more), seen))
                    .as(told + ", more " + more)
                    .isTrue();
        }
    }

    @Test
    void aBlackBaseStaysBlack() {
        Overprint black = Overprint.on(new Rgb(0, 0, 0));
        assertThat(black.of(new Rgb(255, 240, 10))).isEqualTo(new Rgb(0, 0, 0));
        assertThat(black.of(Rgb.WHITE)).isEqualTo(new Rgb(0, 0, 0));
    }

    @Test
    void whatIsTransparentIsNoInk() {
        Overprint pink = Overprint.on(PINK);
        assertThat(pink.of(0x00_123456)).isEqualTo(0xFF_F5B6C8);
        assertThat(pink.of(0xFF_FFFFFF)).isEqualTo(0xFF_F5B6C8);
        assertThat(Overprint.onWhite(0x80_000000)).isEqualTo(0xFF_7F7F7F);
        assertThat(Overprint.onWhite(0xFF_123456)).isEqualTo(0xFF_123456);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aPictureIsForecastPixelByPixelAndStaysAsItIs(long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        int[] picture = dice.ints(200).toArray();
        int[] before = picture.clone();
        Overprint on = Overprint.on(colour(dice));
        int[] seen = on.of(picture);
        assertThat(picture).containsExactly(before);
        for (int i = 0; i < picture.length; i++) {
            assertThat(seen[i]).as("seed %d, pixel %d", seed, i).isEqualTo(on.of(picture[i]));
            assertThat(seen[i] >>> 24).isEqualTo(255);
        }
    }

    @Test
    void whatIsSeenInLabIsWhatIsSeenOnTheScreenButForRounding() {
        Rgb ink = new Rgb(90, 140, 30);
        Lab exact = Overprint.on(PINK).lab(ink);
        assertThat(ColourDifference.of(exact, Lab.of(Overprint.on(PINK).of(ink))))
                .isLessThan(0.5);
    }

    private static boolean isNeverLighter(Rgb one, Rgb other) {
        return one.red() <= other.red() && one.green() <= other.green() && one.blue() <= other.blue();
    }

    private static int less(SplittableRandom dice, int channel) {
        return dice.nextInt(channel + 1);
    }

    private static Rgb colour(SplittableRandom dice) {
        return new Rgb(dice.nextInt(256), dice.nextInt(256), dice.nextInt(256));
    }
}
