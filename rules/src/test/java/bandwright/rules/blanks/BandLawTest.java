package bandwright.rules.blanks;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.sample.SampleBlank;
import bandwright.rules.sample.SampleHeatSource;
import bandwright.rules.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Cylinders and flats; cones have a test of their own. */
class BandLawTest {
    private static final HeatSource OVEN = SampleHeatSource.of(HeatKind.OVEN).source();
    private static final HeatSource PRESS = SampleHeatSource.of(HeatKind.MUG_PRESS)
            .clearance(Length.inches(0.5))
            .source();

    /** A mug of the trade: 10 1/4 in round, a handle of 1 in. Its bands are common practice, no source. */
    private static SampleBlank mug() {
        return SampleBlank.cylinder(Length.inches(10.25), Length.inches(3.75)).handle(Length.inches(1));
    }

    @Test
    void aPressKeepsClearOfTheHandleOnBothSides() {
        assertThat(band(mug(), PRESS).around()).isEqualTo(Length.inches(8.25));
        assertThat(BandLaw.handleGap(mug().blank(), PRESS)).isEqualTo(Length.inches(2));
    }

    @Test
    void anOvenLetsThePrintRunUpToTheHandle() {
        assertThat(band(mug(), OVEN).around()).isEqualTo(Length.inches(9.25));
    }

    @Test
    void noClearanceIsKeptWhereThereIsNoHandle() {
        SampleBlank tumbler = SampleBlank.cylinder(Length.mm(235), Length.mm(207));
        assertThat(band(tumbler, PRESS).around()).isEqualTo(Length.mm(235));
        assertThat(BandLaw.handleGap(tumbler.blank(), PRESS)).isEqualTo(Length.ZERO);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/bandwright/rules/blanks/bands.csv", numLinesToSkip = 1)
    void theSumOfTheTable(
            double circumference,
            double height,
            double top,
            double bottom,
            double handle,
            double clearance,
            double around,
            double up) {
        SampleBlank blank = SampleBlank.cylinder(Length.mm(circumference), Length.mm(height))
                .margins(Length.mm(top), Length.mm(bottom))
                .handle(Length.mm(handle));
        HeatSource source = SampleHeatSource.of(HeatKind.MUG_PRESS)
                .clearance(Length.mm(clearance))
                .source();
        Band band = band(blank, source);
        assertThat(band.around()).isEqualTo(Length.mm(around));
        assertThat(band.up()).isEqualTo(Length.mm(up));
        assertThat(band.circumference()).isEqualTo(Length.mm(circumference));
        assertThat(band.limitedBy()).isEmpty();
        assertThat(band.pattern()).isEmpty();
    }

    @Test
    void aShortPressCutsTheHeightAndSaysSo() {
        HeatSource low = SampleHeatSource.of(HeatKind.MUG_PRESS)
                .maxBandHeight(Length.inches(4.75))
                .source();
        Band band = band(SampleBlank.cylinder(Length.mm(295), Length.mm(130)), low);
        assertThat(band.up()).isEqualTo(Length.mm(120.65));
        assertThat(band.limitedBy())
                .containsExactly(new BandLimit(BandLimit.Column.MAX_BAND_HEIGHT, Length.mm(130), Length.inches(4.75)));
        assertThat(band.limitedBy().get(0).column().key()).isEqualTo("max_band_height");
    }

    @Test
    void aBandOfJustTheLimitIsNotLimited() {
        HeatSource just = SampleHeatSource.of(HeatKind.MUG_PRESS)
                .maxBandHeight(Length.mm(130))
                .maxBandWidth(Length.mm(295))
                .source();
        assertThat(band(SampleBlank.cylinder(Length.mm(295), Length.mm(130)), just)
                        .limitedBy())
                .isEmpty();
    }

    @Test
    void aWrapWithoutHandleRepeatsItsBeginningOverTheSeam() {
        SampleBlank tumbler =
                SampleBlank.cylinder(Length.mm(235), Length.mm(207)).overlap(Length.mm(2));
        Band band = band(tumbler, OVEN);
        assertThat(band.around()).isEqualTo(Length.mm(235));
        assertThat(band.printWidth()).isEqualTo(Length.mm(237));
    }

    @Test
    void aWrapThatThePressCutsShortHasNoSeamToOverlap() {
        HeatSource narrow = SampleHeatSource.of(HeatKind.TUMBLER_PRESS)
                .maxBandWidth(Length.mm(200))
                .source();
        SampleBlank tumbler =
                SampleBlank.cylinder(Length.mm(235), Length.mm(207)).overlap(Length.mm(2));
        Band band = band(tumbler, narrow);
        assertThat(band.printWidth()).isEqualTo(Length.mm(200));
        assertThat(band.limitedBy()).extracting(limit -> limit.column().key()).containsExactly("max_band_width");
    }

    @Test
    void aWrapThatIsOnlyCutInHeightStillOverlaps() {
        HeatSource low = SampleHeatSource.of(HeatKind.TUMBLER_PRESS)
                .maxBandHeight(Length.mm(150))
                .source();
        SampleBlank tumbler =
                SampleBlank.cylinder(Length.mm(235), Length.mm(207)).overlap(Length.mm(2));
        assertThat(band(tumbler, low).overlap()).isEqualTo(Length.mm(2));
    }

    @Test
    void aHandleLeavesNoSeamToOverlap() {
        assertThat(band(mug().overlap(Length.mm(2)), OVEN).overlap()).isEqualTo(Length.ZERO);
    }

    @Test
    void bleedsArePrintedBeyondTheBandButAreNoPartOfIt() {
        Band band =
                band(SampleBlank.cylinder(Length.mm(235), Length.mm(207)).bleeds(Length.mm(1.5), Length.mm(3)), OVEN);
        assertThat(band.up()).isEqualTo(Length.mm(207));
        assertThat(band.printHeight()).isEqualTo(Length.mm(211.5));
    }

    @Test
    void aCoasterWithNegativeMarginsPrintsPastItsEdge() {
        SampleBlank coaster = SampleBlank.flat(Length.mm(95), Length.mm(90))
                .margins(Length.mm(-2.5), Length.mm(-2))
                .sideMargin(Length.mm(-3));
        Band band = band(coaster, OVEN);
        assertThat(band.around()).isEqualTo(Length.mm(101));
        assertThat(band.up()).isEqualTo(Length.mm(94.5));
        assertThat(BandLaw.diameters(coaster.blank(), OVEN)).isEmpty();
    }

    @Test
    void marginsThatMeetLeaveNoBand() {
        SampleBlank mug = mug().margins(Length.inches(2), Length.inches(1.75));
        assertThat(BandLaw.of(mug.blank(), PRESS)).isEmpty();
    }

    @Test
    void aHandleAsWideAsTheBlankLeavesNoBand() {
        assertThat(BandLaw.of(mug().handle(Length.inches(9.25)).blank(), PRESS)).isEmpty();
        assertThat(BandLaw.of(mug().handle(Length.inches(9.24)).blank(), PRESS)).isPresent();
    }

    private static Band band(SampleBlank blank, HeatSource source) {
        return BandLaw.of(blank.blank(), source).orElseThrow();
    }
}
