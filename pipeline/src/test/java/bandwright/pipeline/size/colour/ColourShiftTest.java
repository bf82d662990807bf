package bandwright.pipeline.size.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.shop.PaintedPng;
import bandwright.pipeline.shop.SampleUnit;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.colour.ColourShift.Lost;
import bandwright.rules.colour.ColourDifference;
import bandwright.rules.colour.Lab;
import bandwright.rules.colour.Overprint;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColourShiftTest {
    private static final Rgb PINK = new Rgb(245, 182, 200);
    private static final Rgb YELLOW = new Rgb(255, 221, 0);
    private static final Rgb NAVY = new Rgb(20, 34, 90);
    private static final int YELLOW_PIXEL = 0xFF_FFDD00;
    private static final int NAVY_PIXEL = 0xFF_14225A;
    private static final int NOTHING = 0x00_14225A;

    /** So far off is one decimal. */
    private static final double ROUNDING = 0.0501;

    @TempDir
    private Path folder;

    @Test
    void onWhiteNothingShifts() {
        assertThat(shift(Rgb.WHITE, picture(painted("lamp.png", (x, y) -> YELLOW_PIXEL))))
                .isEqualTo(ColourShift.NONE);
    }

    @Test
    void whatIsNotInkedIsNotCounted() {
        ArtworkFile half = painted("half.png", (x, y) -> x < 30 ? YELLOW_PIXEL : x < 60 ? NOTHING : 0xFF_FFFFFF);
        double mean = shift(PINK, picture(half)).mean().doubleValue();
        assertThat(mean).isCloseTo(difference(YELLOW, PINK), within(ROUNDING)).isGreaterThan(5);
    }

    @Test
    void aPictureWithoutInkShiftsNothing() {
        assertThat(shift(PINK, picture(painted("white.png", (x, y) -> 0xFF_FFFFFF))))
                .isEqualTo(ColourShift.NONE);
    }

    @Test
    void coloursCountByTheirArea() {
        ArtworkFile flag = painted("flag.png", (x, y) -> y < 10 ? YELLOW_PIXEL : NAVY_PIXEL);
        double mean = shift(PINK, picture(flag)).mean().doubleValue();
        double expected = 0.25 * difference(YELLOW, PINK) + 0.75 * difference(NAVY, PINK);
        assertThat(mean).isCloseTo(expected, within(ROUNDING));
    }

    @Test
    void whatIsCroppedAwayIsNotCounted() {
        ArtworkFile flag = painted("flag.png", (x, y) -> x < 50 ? YELLOW_PIXEL : NAVY_PIXEL);
        Layer left = new Layer.Picture(flag, box(0, 0, 100, 40), box(0, 0, 50, 40));
        assertThat(shift(PINK, left).mean().doubleValue()).isCloseTo(difference(YELLOW, PINK), within(ROUNDING));
    }

    @Test
    void whatStandsAboveIsCroppedAboveAndNotBelow() {
        ArtworkFile flag = painted("flag.png", (x, y) -> y < 20 ? YELLOW_PIXEL : NAVY_PIXEL);
        Layer upper = new Layer.Picture(flag, box(0, 0, 100, 40), box(0, 20, 100, 20));
        assertThat(shift(PINK, upper).mean().doubleValue()).isCloseTo(difference(YELLOW, PINK), within(ROUNDING));
    }

    @Test
    void aBackgroundCountsWhereItShows() {
        // The picture covers half of the background, and half of the picture is transparent: three quarters are navy.
        ArtworkFile half = painted("half.png", (x, y) -> x < 50 ? YELLOW_PIXEL : NOTHING);
        Layer ground = new Layer.Fill(box(0, 0, 200, 40), NAVY);
        double mean = shift(PINK, ground, new Layer.Picture(half, box(50, 0, 100, 40), box(50, 0, 100, 40)))
                .mean()
                .doubleValue();
        double expected = 0.25 * difference(YELLOW, PINK) + 0.75 * difference(NAVY, PINK);
        assertThat(mean).isCloseTo(expected, within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void countingLikeColoursTogetherChangesNothingThatIsSaid(long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        Rgb base = new Rgb(dice.nextInt(256), dice.nextInt(256), dice.nextInt(256));
        int[] pixels =
                dice.ints(100 * 40, 0, 1 << 24).map(rgb -> 0xFF00_0000 | rgb).toArray();
        ArtworkFile noise = painted("noise.png", (x, y) -> pixels[y * 100 + x]);
        double sum = 0;
        for (int pixel : pixels) {
            sum += difference(new Rgb(pixel >> 16 & 255, pixel >> 8 & 255, pixel & 255), base);
        }
        assertThat(shift(base, picture(noise)).mean().doubleValue())
                .as("seed %d, base %s", seed, base)
                .isCloseTo(sum / pixels.length, within(0.15));
    }

    @Test
    void yellowOnWhiteIsLostOnAYellowBase() {
        ArtworkFile lamp = painted("lamp.png", (x, y) -> x < 20 ? 0xFF_FFFF00 : x < 40 ? NAVY_PIXEL : NOTHING);
        assertThat(shift(new Rgb(255, 230, 0), picture(lamp)).lost())
                .contains(new Lost(new Rgb(255, 255, 0), Rgb.WHITE));
        assertThat(shift(PINK, picture(lamp)).lost()).isEmpty();
    }

    @Test
    void everythingIsLostOnBlackAndThePairThatDifferedMostIsNamed() {
        ArtworkFile lamp = painted("lamp.png", (x, y) -> x < 30 ? YELLOW_PIXEL : x < 60 ? NAVY_PIXEL : 0xFF_C03020);
        assertThat(shift(new Rgb(0, 0, 0), picture(lamp)).lost()).contains(new Lost(NAVY, YELLOW));
    }

    @Test
    void aSpeckIsNoLoss() {
        ArtworkFile speck = painted("speck.png", (x, y) -> x < 2 ? YELLOW_PIXEL : NAVY_PIXEL);
        assertThat(shift(new Rgb(0, 0, 0), picture(speck)).lost()).isEmpty();
    }

    @Test
    void aPictureThatCannotBeLookedAtHasNoPrint() {
        Layer missing = picture(SampleUnit.artwork("gone.png", 100, 40));
        assertThat(Print.of(List.of(missing), new Sights()::of)).isEmpty();
    }

    private ArtworkFile painted(String name, IntBinaryOperator argb) {
        return PaintedPng.of(folder, name, 100, 40, argb);
    }

    private static Layer picture(ArtworkFile artwork) {
        return new Layer.Picture(artwork, box(0, 0, 100, 40), box(0, 0, 100, 40));
    }

    private static ColourShift shift(Rgb base, Layer... layers) {
        return ColourShift.of(Print.of(List.of(layers), new Sights()::of).orElseThrow(), base);
    }

    private static double difference(Rgb printed, Rgb base) {
        return ColourDifference.of(Lab.of(printed), Overprint.on(base).lab(printed));
    }

    private static Box box(double x, double y, double width, double height) {
        return new Box(Length.mm(x), Length.mm(y), Length.mm(width), Length.mm(height));
    }
}
