package bandwright.pipeline.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import bandwright.pipeline.match.TestShop;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Fit;
import bandwright.rules.designs.Placement;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked by hand in a box of 200 x 100 mm. CSS Images Module Level 3, section 5.5: contain is the largest size inside the
 * box, cover the smallest that covers it, fill the box itself; object-position 0 %, 50 % and 100 % align the same edges
 * or centres of picture and box, and there our crop centre means the same.
 */
class PictureFitTest {
    private static final Box BOX = Box.of(Length.mm(200), Length.mm(100));

    @ParameterizedTest
    @CsvSource({
        // pixels     fit      centre    x      y      width  height crop    stretch
        "300, 100, CONTAIN, 50, 50, 0, 16.666667, 200, 66.666667, 0, 0",
        "100, 100, CONTAIN, 50, 50, 50, 0, 100, 100, 0, 0",
        "100, 100, CONTAIN, 0, 0, 50, 0, 100, 100, 0, 0",
        "100, 100, COVER, 50, 50, 0, -50, 200, 200, 0.5, 0",
        "100, 100, COVER, 50, 0, 0, -100, 200, 200, 0.5, 0",
        "100, 100, COVER, 50, 100, 0, 0, 200, 200, 0.5, 0",
        "400, 100, COVER, 50, 50, -100, 0, 400, 100, 0.5, 0",
        "400, 100, COVER, 0, 50, 0, 0, 400, 100, 0.5, 0",
        "400, 100, COVER, 100, 50, -200, 0, 400, 100, 0.5, 0",
        "200, 100, COVER, 0, 100, 0, 0, 200, 100, 0, 0",
        "300, 100, FILL, 50, 50, 0, 0, 200, 100, 0, 0.5",
        "100, 100, FILL, 50, 50, 0, 0, 200, 100, 0, 1",
        "200, 100, FILL, 50, 50, 0, 0, 200, 100, 0, 0",
    })
    void aPictureLiesAsCssObjectFitHasIt(
            int pixelsWide,
            int pixelsHigh,
            Fit fit,
            double centreX,
            double centreY,
            double x,
            double y,
            double width,
            double height,
            double crop,
            double stretch) {
        PictureFit got = PictureFit.of(
                design(fit, centreX, centreY), TestShop.artwork("heron.png", pixelsWide, pixelsHigh), BOX);
        assertThat(got.place()).isEqualTo(new Box(Length.mm(x), Length.mm(y), Length.mm(width), Length.mm(height)));
        assertThat(got.crop()).isCloseTo(crop, within(1e-12));
        assertThat(got.stretch()).isCloseTo(stretch, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"30, -20", "40, -60", "10, 0", "75, -200", "90, -200"})
    void aCropIsCentredOnItsPointThenPushedInside(double centreX, double x) {
        // 400 mm wide, 200 shown: centred at 30 % the window runs from 20 to 220 mm, so the picture begins at -20.
        PictureFit got = PictureFit.of(design(Fit.COVER, centreX, 50), TestShop.artwork("heron.png", 400, 100), BOX);
        assertThat(got.place().x()).isEqualTo(Length.mm(x));
    }

    @Test
    void theCropCentreCountsFromTheUpperEdge() {
        // 200 mm high, 100 shown, centred 70 mm below the upper edge: from 20 to 120 mm below it, 80 mm cut off below.
        PictureFit got = PictureFit.of(design(Fit.COVER, 50, 35), TestShop.artwork("heron.png", 100, 100), BOX);
        assertThat(got.place().y()).isEqualTo(Length.mm(-80));
        assertThat(got.place().top()).isEqualTo(Length.mm(120));
    }

    @ParameterizedTest
    @CsvSource({
        "3000, 1500, COVER, 381", // 3000 pixels / 7.874 in = 381.0
        "3000, 1500, CONTAIN, 381",
        "3000, 3000, COVER, 381", // the width decides, the height is cut
        "3000, 3000, CONTAIN, 762", // 3000 / 3.937 in
        "3000, 600, FILL, 152", // 600 / 3.937 in = 152.4
        "787, 394, COVER, 99", // 787 / 7.874 = 99.95, rounded down
    })
    void pixelsAnInchAreTheSmallerOfBothDirectionsRoundedDown(int wide, int high, Fit fit, int ppi) {
        assertThat(PictureFit.of(design(fit, 50, 50), TestShop.artwork("heron.png", wide, high), BOX)
                        .ppi())
                .isEqualTo(ppi);
    }

    @Test
    void exactlyThreeHundredIsNotTwoHundredAndNinetyNine() {
        Box odd = Box.of(Length.inches(8.375), Length.inches(3.75));
        // 2513 x 1125 pixels: the height decides, 1125 / 3.75 = 300 exactly.
        assertThat(PictureFit.of(design(Fit.COVER, 50, 50), TestShop.artwork("heron.png", 2513, 1125), odd)
                        .ppi())
                .isEqualTo(300);
    }

    @Test
    void theOrientationTagIsObeyed() {
        ArtworkFile turned = new ArtworkFile(
                "heron.jpg", Path.of("heron.jpg"), 1, ArtworkFile.Kind.JPEG, 100, 200, Orientation.RIGHT_TOP);
        PictureFit got = PictureFit.of(design(Fit.COVER, 50, 50), turned, BOX);
        assertThat(got.place()).isEqualTo(BOX);
        assertThat(got.crop()).isZero();
    }

    private static Design design(Fit fit, double centreX, double centreY) {
        return TestShop.design("heron", "heron.png", fit, Placement.ALL_ROUND, centreX, centreY, Optional.empty());
    }
}
