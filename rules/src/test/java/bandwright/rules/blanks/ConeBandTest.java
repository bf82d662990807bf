package bandwright.rules.blanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.sample.SampleBlank;
import bandwright.rules.sample.SampleHeatSource;
import bandwright.rules.units.Length;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConeBandTest {
    private static final HeatSource OVEN = SampleHeatSource.of(HeatKind.OVEN).source();
    private static final HeatSource PRESS =
            SampleHeatSource.of(HeatKind.MUG_PRESS).clearance(Length.mm(12.7)).source();

    /** 88 mm at the rim, 62 mm at the foot, 101 mm high, a handle of 20 mm: the sums were worked by hand. */
    private static SampleBlank coneMug() {
        return SampleBlank.cone(88, 62, 101).margins(Length.mm(3), Length.mm(8)).handle(Length.mm(20));
    }

    @Test
    void aConeMugWorkedByHand() {
        Band band = band(coneMug(), PRESS);
        assertThat(band.around().mm2()).isEqualByComparingTo("184.00");
        assertThat(band.up().mm2()).isEqualByComparingTo("90.83");
        ConePattern pattern = band.pattern().orElseThrow();
        double rim = pattern.rimRadius().mm();
        double foot = pattern.footRadius().mm();
        double half = pattern.sweepRadians() / 2;
        assertThat(rim * half * 2).isCloseTo(212.21, within(0.005));
        assertThat(foot * half * 2).isCloseTo(155.80, within(0.005));
        assertThat(2 * rim * Math.sin(half)).isCloseTo(208.82, within(0.005));
        assertThat(rim - foot * Math.cos(half)).isCloseTo(102.83, within(0.005));
        assertThat(pattern.rimIsOuter()).isTrue();
    }

    @Test
    void theGapIsAsAskedWhereTheBandIsNarrowestAndWiderElsewhere() {
        Band band = band(coneMug(), PRESS);
        ConePattern pattern = band.pattern().orElseThrow();
        ConeWall wall = ConeWall.of((Form.Cone) coneMug().blank().form());
        double atFoot = Math.PI * wall.diameter(3 + band.up().mm())
                - pattern.footRadius().mm() * pattern.sweepRadians();
        double atRim = Math.PI * wall.diameter(3) - pattern.rimRadius().mm() * pattern.sweepRadians();
        assertThat(atFoot).isCloseTo(45.4, within(1e-5));
        assertThat(atRim).isGreaterThan(45.4);
    }

    @Test
    void aConeThatIsWiderAtTheFootIsTheSameConeTurnedOver() {
        Band band = band(coneMug(), PRESS);
        Band turned = band(
                SampleBlank.cone(62, 88, 101)
                        .margins(Length.mm(8), Length.mm(3))
                        .handle(Length.mm(20)),
                PRESS);
        assertThat(turned.around().mm()).isCloseTo(band.around().mm(), within(1e-5));
        ConePattern pattern = turned.pattern().orElseThrow();
        assertThat(pattern.rimIsOuter()).isFalse();
        assertThat(pattern.footRadius().mm())
                .isCloseTo(band.pattern().orElseThrow().rimRadius().mm(), within(1e-3));
    }

    @Test
    void aShortOvenMovesTheFootEdgeUpAndTakesTheGapThere() {
        HeatSource low = SampleHeatSource.of(HeatKind.OVEN)
                .clearance(Length.mm(12.7))
                .maxBandHeight(Length.mm(50))
                .source();
        Band band = band(coneMug(), low);
        ConePattern pattern = band.pattern().orElseThrow();
        ConePattern whole = band(coneMug(), PRESS).pattern().orElseThrow();
        assertThat(pattern.rimRadius()).isEqualTo(whole.rimRadius());
        ConeWall wall = ConeWall.of((Form.Cone) coneMug().blank().form());
        double gap = Math.PI * wall.diameter(53) - pattern.footRadius().mm() * pattern.sweepRadians();
        assertThat(gap).isCloseTo(45.4, within(1e-5));
        assertThat(band.limitedBy()).hasSize(1);
    }

    @Test
    void aNarrowOvenTurnsTheSectorsEndsInward() {
        HeatSource narrow =
                SampleHeatSource.of(HeatKind.OVEN).maxBandWidth(Length.mm(100)).source();
        Band band = band(coneMug(), narrow);
        assertThat(band.around()).isEqualTo(Length.mm(100));
        ConePattern pattern = band.pattern().orElseThrow();
        double middle = (pattern.rimRadius().mm() + pattern.footRadius().mm()) / 2;
        assertThat(middle * pattern.sweepRadians()).isCloseTo(100, within(1e-5));
    }

    @Test
    void aWallWhoseArcRisesLessThanATenthOfAMillimetreIsPrintedStraight() {
        // Rise = arc^2 / (8 R), R = top x slant / (top - bottom): 0.2 mm of taper rise 0.09 mm, 0.25 mm rise 0.11 mm.
        assertThat(band(SampleBlank.cone(75, 74.8, 205), OVEN).pattern()).isEmpty();
        assertThat(band(SampleBlank.cone(75, 74.75, 205), OVEN).pattern()).isPresent();
        assertThat(band(SampleBlank.cone(75, 75, 205), OVEN).pattern()).isEmpty();
    }

    @Test
    void aConeWithoutHandleGoesAllTheWayRound() {
        Band band = band(SampleBlank.cone(88, 62, 101).overlap(Length.mm(2)), OVEN);
        ConePattern pattern = band.pattern().orElseThrow();
        // 45.957 degrees: radial-line development of the whole frustum.
        assertThat(Math.toDegrees(pattern.sweepRadians())).isCloseTo(45.957, within(0.001));
        assertThat(band.overlap()).isEqualTo(Length.mm(2));
        assertThat(band.around()).isEqualTo(band.circumference());
    }

    @Test
    void theDiametersAreThoseOfTheBandNotOfTheBlank() {
        BandLaw.Diameters diameters =
                BandLaw.diameters(coneMug().blank(), PRESS).orElseThrow();
        // By similar triangles, with s = 101.833 mm: 88 - 26 x 3 / s and 62 + 26 x 8 / s.
        assertThat(diameters.widest().mm()).isCloseTo(87.234, within(0.001));
        assertThat(diameters.narrowest().mm()).isCloseTo(64.043, within(0.001));
    }

    @Test
    void theTaperIsTheLeanOfOneSide() {
        // atan(13 / 101) and atan(1.5 / 205)
        assertThat(BandLaw.taperDegrees(coneMug().blank())).isCloseTo(7.334, within(0.001));
        assertThat(BandLaw.taperDegrees(SampleBlank.cone(72.5, 75.5, 205).blank()))
                .isCloseTo(0.419, within(0.001));
        assertThat(BandLaw.taperDegrees(
                        SampleBlank.cylinder(Length.mm(257), Length.mm(95)).blank()))
                .isZero();
    }

    @Test
    void marginsLongerThanTheWallLeaveNoBandWhateverTheCone() {
        for (double foot = 0.5; foot < 200; foot += 7.25) {
            Blank blank = SampleBlank.cone(60, foot, 50)
                    .margins(Length.mm(30), Length.mm(400))
                    .handle(Length.mm(20))
                    .blank();
            assertThat(BandLaw.of(blank, PRESS)).as("foot %s", foot).isEmpty();
        }
    }

    @Test
    void marginsThatReachPastTheApexLeaveNoBand() {
        // 60 mm over 80 mm of slant: half of the wall's length further up the cone would end in a point.
        Blank blank = SampleBlank.cone(30, 60, Math.sqrt(80 * 80 - 15 * 15))
                .margins(Length.ZERO, Length.mm(160))
                .handle(Length.mm(20))
                .blank();
        assertThat(BandLaw.of(blank, PRESS)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void rimAndFootAreAlikeAndABandNeverGrowsWithTheClearance(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 100; round++) {
            double rim = random.nextDouble(50, 110);
            double foot = random.nextDouble(50, 110);
            double height = random.nextDouble(60, 210);
            Length top = Length.mm(random.nextDouble(0, 20));
            Length bottom = Length.mm(random.nextDouble(0, 20));
            Length handle = Length.mm(random.nextDouble(5, 40));
            String sample = "seed " + seed + ", round " + round;
            SampleBlank upright =
                    SampleBlank.cone(rim, foot, height).margins(top, bottom).handle(handle);
            SampleBlank turned =
                    SampleBlank.cone(foot, rim, height).margins(bottom, top).handle(handle);
            Length before = band(upright, OVEN).around();
            assertThat(band(turned, OVEN).around().mm()).as(sample).isCloseTo(before.mm(), within(1e-4));
            for (double clearance = 0.5; clearance < 15; clearance += 2.5) {
                HeatSource press = SampleHeatSource.of(HeatKind.MUG_PRESS)
                        .clearance(Length.mm(clearance))
                        .source();
                Length around = band(upright, press).around();
                assertThat(around).as(sample).isLessThan(before);
                before = around;
            }
        }
    }

    private static Band band(SampleBlank blank, HeatSource source) {
        return BandLaw.of(blank.blank(), source).orElseThrow();
    }
}
