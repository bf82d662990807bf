package bandwright.pipeline.size;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.match.TestShop;
import bandwright.pipeline.type.Outline;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.PlacementLaw;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Fit;
import bandwright.rules.designs.Placement;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A tumbler of 200 x 96 mm with bleeds of 3 and 1 mm: its picture is fitted to 200 x 100 mm. */
class PrintedPictureTest {
    private static final ArtworkFile SQUARE = TestShop.artwork("heron.png", 100, 100);
    private static final Rgb SAND = new Rgb(240, 220, 180);

    @Test
    void withoutOverlapThereIsOnePictureClippedToTheBandAndItsBleeds() {
        Transfer transfer = printed(0, Fit.COVER, Optional.empty());
        assertThat(transfer.width()).isEqualTo(Length.mm(200));
        assertThat(transfer.height()).isEqualTo(Length.mm(100));
        assertThat(transfer.layers())
                .containsExactly(new Layer.Picture(SQUARE, box(0, -50, 200, 200), box(0, 0, 200, 100)));
    }

    @Test
    void theOverlapRepeatsTheFirstMillimetresAtTheRightEnd() {
        Transfer transfer = printed(2, Fit.COVER, Optional.empty());
        assertThat(transfer.width()).isEqualTo(Length.mm(202));
        assertThat(transfer.layers())
                .containsExactly(
                        new Layer.Picture(SQUARE, box(0, -50, 200, 200), box(0, 0, 200, 100)),
                        new Layer.Picture(SQUARE, box(200, -50, 200, 200), box(200, 0, 2, 100)));
    }

    @Test
    void aCroppedPictureIsRepeatedFromTheCutAndNotFromItsOwnEdge() {
        ArtworkFile wide = TestShop.artwork("choir.png", 400, 100);
        Transfer transfer =
                of(band(2), design(Fit.COVER, Optional.empty()), wide).transfer();
        // 400 mm wide, 100 cut off on both sides: the strip shows the picture from its 100th to its 102nd millimetre.
        assertThat(transfer.layers().get(1))
                .isEqualTo(new Layer.Picture(wide, box(100, 0, 400, 100), box(200, 0, 2, 100)));
    }

    /** Letters from 20 to 60 mm along and 10 to 20 mm up, of which what lies beyond a box is not printed. */
    @ParameterizedTest
    @CsvSource({"20, 10, 40, ''", "20.04, 10, 39.96, ''", "26, 10, 34, 6.00", "0, 10, 57.5, 2.50", "0, 13, 90, 3.00"})
    void lettersThatAreCroppedWithTheirPictureAreTold(double x, double y, double width, String cut) {
        Box ink = box(20, 10, 40, 10);
        Layer.Type letters = new Layer.Type(Outline.of(ink), SAND, ink, box(x, y, width, 30));
        PrintedPicture printed = of(band(0), design(Fit.COVER, Optional.empty()), SQUARE)
                .with(List.of(new PrintedPicture.Lettering("name", letters)), Optional.empty());
        assertThat(printed.cutText().map(length -> length.mm2().toPlainString()).orElse(""))
                .isEqualTo(cut);
    }

    @Test
    void theBackgroundFillsTheOverlapToo() {
        Transfer transfer = printed(2, Fit.CONTAIN, Optional.of(SAND));
        assertThat(transfer.layers())
                .containsExactly(
                        new Layer.Fill(box(0, 0, 202, 100), SAND),
                        new Layer.Picture(SQUARE, box(50, 0, 100, 100), box(50, 0, 100, 100)));
    }

    @Test
    void aContainedPictureThatReachesTheSeamIsRepeated() {
        ArtworkFile banner = TestShop.artwork("choir.png", 400, 100);
        Transfer transfer =
                of(band(2), design(Fit.CONTAIN, Optional.empty()), banner).transfer();
        assertThat(transfer.layers().get(1))
                .isEqualTo(new Layer.Picture(banner, box(200, 25, 200, 50), box(200, 25, 2, 50)));
    }

    @Test
    void twoSidesShowTwoPicturesUprightAndTheBandBetweenStaysWhite() {
        Band mug = new Band(
                Length.inches(8.25),
                Length.inches(3.75),
                Length.inches(10.25),
                Length.ZERO,
                Length.ZERO,
                Length.ZERO,
                List.of(),
                Optional.empty());
        ArtworkFile other = TestShop.artwork("choir.png", 100, 100);
        Design design = TestShop.design("heron", "heron.png", Fit.COVER, Placement.TWO_SIDED, 50, 50, Optional.empty());
        PrintedPicture printed = of(mug, design, SQUARE, other);
        assertThat(printed.transfer().width()).isEqualTo(Length.inches(8.25));
        assertThat(printed.fits())
                .extracting(PrintedPicture.PlacedPicture::artwork)
                .containsExactly(SQUARE, other);
        // Common practice, no source: boxes of 79.375 mm, centred at 39.69 and 169.86 mm of the band.
        assertThat(printed.transfer().layers())
                .extracting(layer ->
                        layer.shown().x().mm2() + " " + layer.shown().width().mm2())
                .containsExactly("0.00 79.38", "130.18 79.38");
    }

    @Test
    void theBackgroundIsForContainOnly() {
        assertThat(printed(0, Fit.COVER, Optional.of(SAND)).layers()).noneMatch(Layer.Fill.class::isInstance);
        assertThat(printed(0, Fit.FILL, Optional.of(SAND)).layers()).noneMatch(Layer.Fill.class::isInstance);
    }

    private static Transfer printed(double overlap, Fit fit, Optional<Rgb> background) {
        return of(band(overlap), design(fit, background), SQUARE).transfer();
    }

    private static PrintedPicture of(Band band, Design design, ArtworkFile... artworks) {
        return PrintedPicture.of(band, design, PlacementLaw.boxes(design.placement(), band, false), List.of(artworks));
    }

    private static Design design(Fit fit, Optional<Rgb> background) {
        return TestShop.design("heron", "heron.png", fit, Placement.ALL_ROUND, 50, 50, background);
    }

    private static Band band(double overlap) {
        return new Band(
                Length.mm(200),
                Length.mm(96),
                Length.mm(200),
                Length.mm(overlap),
                Length.mm(3),
                Length.mm(1),
                List.of(),
                Optional.empty());
    }

    private static Box box(double x, double y, double width, double height) {
        return new Box(Length.mm(x), Length.mm(y), Length.mm(width), Length.mm(height));
    }
}
