package bandwright.pipeline.size.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.shop.PaintedPng;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.type.Outline;
import bandwright.rules.colour.Contrast;
import bandwright.rules.colour.Overprint;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Letters of 60 x 8 mm on a band of 100 x 40 mm, 20 mm from its left and 4 mm from its lower edge. */
class TextContrastTest {
    private static final Rgb PINK = new Rgb(245, 182, 200);
    private static final Rgb YELLOW = new Rgb(255, 255, 0);
    private static final Rgb BLACK = new Rgb(0, 0, 0);
    private static final int BLACK_PIXEL = 0xFF_000000;
    private static final int WHITE_PIXEL = 0xFF_FFFFFF;
    private static final Box BAND = box(0, 0, 100, 40);
    private static final Box INK = box(20, 4, 60, 8);

    @TempDir
    private Path folder;

    @Test
    void yellowOnABarePinkBaseIsJudgedAsBothWillLook() {
        TextContrast contrast = contrast(letters(YELLOW), PINK);
        Rgb seen = Overprint.on(PINK).of(YELLOW);
        assertThat(contrast.ratio())
                .isCloseTo(Contrast.ratio(seen, PINK), within(0.01))
                .isLessThan(1.5);
        assertThat(contrast.isBare()).isTrue();
        assertThat(contrast.ground()).isEqualTo(PINK);
        assertThat(contrast.ratioOfBlack()).isCloseTo(Contrast.ratio(BLACK, PINK), within(1e-9));
        assertThat(contrast.ratioOfNoInk()).isEqualTo(1);
    }

    @Test
    void whiteLettersAreNoInk() {
        assertThat(contrast(letters(Rgb.WHITE), Rgb.WHITE).ratio()).isEqualTo(1);
        assertThat(contrast(letters(Rgb.WHITE), PINK).ratio()).isEqualTo(1);
    }

    @Test
    void whiteLettersOnADarkPictureShowTheBase() {
        TextContrast contrast = contrast(letters(Rgb.WHITE), PINK, painted((x, y) -> BLACK_PIXEL));
        assertThat(contrast.ratio()).isCloseTo(Contrast.ratio(PINK, BLACK), within(1e-9));
        assertThat(contrast.isBare()).isFalse();
        assertThat(contrast.ground()).isEqualTo(BLACK);
        assertThat(contrast.ratioOfBlack()).isEqualTo(1);
        assertThat(contrast.ratioOfNoInk()).isEqualTo(contrast.ratio());
    }

    @Test
    void aBackgroundIsGround() {
        TextContrast contrast = contrast(letters(BLACK), Rgb.WHITE, new Layer.Fill(BAND, BLACK));
        assertThat(contrast.ratio()).isEqualTo(1);
        assertThat(contrast.isBare()).isFalse();
    }

    /** White letters over a picture that is black, but white in the last so many of the letters' 60 mm. */
    @ParameterizedTest
    @CsvSource({"0, 21", "12, 21", "18, 21", "30, 1", "42, 1", "60, 1"})
    void lettersThatDrownInHalfOfTheirBoxAreSeenToDrown(int drownedMm, double ratio) {
        Layer picture = painted((x, y) -> x < 80 - drownedMm ? BLACK_PIXEL : WHITE_PIXEL);
        assertThat(contrast(letters(Rgb.WHITE), Rgb.WHITE, picture).ratio()).isCloseTo(ratio, within(1e-9));
    }

    @Test
    void lettersBetweenDarkAndLightStandOutFromBoth() {
        Rgb grey = new Rgb(118, 118, 118); // 4.5 to 1 against white, 4.6 against black; against their mean 2.6
        Layer picture = painted((x, y) -> x < 50 ? BLACK_PIXEL : WHITE_PIXEL);
        assertThat(contrast(letters(grey), Rgb.WHITE, picture).ratio()).isGreaterThan(4);
    }

    @Test
    void aFineTextureIsBlendedAsTheEyeDoes() {
        Rgb grey = new Rgb(188, 188, 188); // half of white's light
        Layer texture = painted((x, y) -> (x + y) % 2 == 0 ? BLACK_PIXEL : WHITE_PIXEL);
        assertThat(contrast(letters(grey), Rgb.WHITE, texture).ratio()).isLessThan(1.5);
    }

    @Test
    void onlyWhatLiesRoundTheLettersCounts() {
        Layer picture = painted((x, y) -> x >= 20 && x < 80 && y >= 28 && y < 36 ? BLACK_PIXEL : WHITE_PIXEL);
        assertThat(contrast(letters(Rgb.WHITE), Rgb.WHITE, picture).ratio()).isCloseTo(21, within(1e-9));
    }

    @Test
    void lettersThatAreCroppedAwayAreNotJudged() {
        Layer.Type away = new Layer.Type(Outline.of(INK), BLACK, INK, box(0, 20, 100, 20));
        assertThat(TextContrast.of(away, print(), Rgb.WHITE)).isEmpty();
    }

    @Test
    void onADarkBaseNoInkStandsOut() {
        Rgb dark = new Rgb(32, 32, 36);
        TextContrast contrast = contrast(letters(YELLOW), dark);
        assertThat(Math.max(contrast.ratioOfBlack(), contrast.ratioOfNoInk())).isLessThan(2);
    }

    private Layer painted(IntBinaryOperator argb) {
        ArtworkFile artwork = PaintedPng.of(folder, "painted.png", 100, 40, argb);
        return new Layer.Picture(artwork, BAND, BAND);
    }

    private static Layer.Type letters(Rgb colour) {
        return new Layer.Type(Outline.of(INK), colour, INK, BAND);
    }

    private static TextContrast contrast(Layer.Type letters, Rgb base, Layer... under) {
        Optional<TextContrast> contrast = TextContrast.of(letters, print(under), base);
        return contrast.orElseThrow();
    }

    private static Print print(Layer... layers) {
        return Print.of(List.of(layers), new Sights()::of).orElseThrow();
    }

    private static Box box(double x, double y, double width, double height) {
        return new Box(Length.mm(x), Length.mm(y), Length.mm(width), Length.mm(height));
    }
}
