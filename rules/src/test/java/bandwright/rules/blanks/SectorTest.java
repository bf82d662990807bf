package bandwright.rules.blanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.sample.SampleBlank;
import bandwright.rules.sample.SampleHeatSource;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SectorTest {
    private static final HeatSource OVEN = SampleHeatSource.of(HeatKind.OVEN).source();

    /**
     * Whole walls without handle, laid flat. First four: a duct net (d 8 and 5, h 4 in), a step-down (r 5 and 3, h 6), a
     * lampshade (d 40 and 8, h 21 cm) and a template (d 550 and 290, h 250 mm) from teaching pages, recomputed by radial-
     * line development; last: a funnel of a sheet-metal textbook of 1921 (d 6 and 3, h 3 in: slant of 1.5 and 3, area
     * 47.4175 sq in).
     */
    @ParameterizedTest
    @CsvSource({
        // rim mm, foot mm, height mm, outer radius, inner radius, degrees, area mm2
        "203.2, 127, 101.6, 289.357, 180.848, 126.404, ",
        "254, 152.4, 152.4, 401.610, 240.966, 113.842, ",
        "400, 80, 210, 330.009, 66.002, 218.176, ",
        "550, 290, 250, 596.073, 314.293, 166.087, ",
        "152.4, 76.2, 76.2, 170.388, 85.194, 160.997, 30591.9",
        "88, 62, 101, 344.666, 242.833, 45.957, ",
    })
    void publishedFrustumsLaidFlat(
            double rim, double foot, double height, double outer, double inner, double degrees, Double area) {
        Sector sector = whole(SampleBlank.cone(rim, foot, height));
        assertThat(sector.outer().mm()).isCloseTo(outer, within(0.001));
        assertThat(sector.inner().mm()).isCloseTo(inner, within(0.001));
        assertThat(Math.toDegrees(2 * sector.halfRadians())).isCloseTo(degrees, within(0.001));
        if (area != null) {
            assertThat(sector.area()).isCloseTo(area, within(0.1));
        }
    }

    @Test
    void theBoxOfTheConeMugWorkedByHand() {
        SampleBlank mug = SampleBlank.cone(88, 62, 101)
                .margins(Length.mm(3), Length.mm(8))
                .handle(Length.mm(45.4));
        Box box = whole(mug).box();
        assertThat(box.width().mm2()).isEqualByComparingTo("208.82");
        assertThat(box.height().mm2()).isEqualByComparingTo("102.83");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void layingFlatAndBackIsTheSamePlace(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Sector sector = any(random);
        double width = 2 * sector.halfRadians() * sector.middle().mm();
        double height = sector.outer().minus(sector.inner()).mm();
        for (int i = 0; i < 200; i++) {
            double u = random.nextDouble() * width;
            double v = random.nextDouble() * height;
            double x = sector.x(u, v);
            double y = sector.y(u, v);
            assertThat(sector.u(x, y)).as("seed %d", seed).isCloseTo(u, within(1e-6));
            assertThat(sector.v(x, y)).as("seed %d", seed).isCloseTo(v, within(1e-6));
        }
    }

    /** By small straight steps along the picture's lower edge, its middle and its upper edge. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void arcsAreAsLongAsTheWallIsRound(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Sector sector = any(random);
        double width = 2 * sector.halfRadians() * sector.middle().mm();
        double height = sector.outer().minus(sector.inner()).mm();
        for (double v : new double[] {0, height / 2, height}) {
            double length = 0;
            int steps = 20_000;
            for (int i = 0; i < steps; i++) {
                double u0 = width * i / steps;
                double u1 = width * (i + 1) / steps;
                length += Math.hypot(sector.x(u1, v) - sector.x(u0, v), sector.y(u1, v) - sector.y(u0, v));
            }
            double expected = 2 * sector.halfRadians() * sector.radius(v);
            assertThat(length).as("seed %d at %f", seed, v).isCloseTo(expected, within(1e-4));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void boxAndCoverHoldTheWholePictureAndTouchIt(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Sector sector = any(random);
        double width = 2 * sector.halfRadians() * sector.middle().mm();
        double height = sector.outer().minus(sector.inner()).mm();
        double left = Double.MAX_VALUE;
        double low = Double.MAX_VALUE;
        double right = -Double.MAX_VALUE;
        double top = -Double.MAX_VALUE;
        for (int i = 0; i <= 400; i++) {
            for (int j = 0; j <= 40; j++) {
                double x = sector.x(width * i / 400, height * j / 40);
                double y = sector.y(width * i / 400, height * j / 40);
                left = Math.min(left, x);
                right = Math.max(right, x);
                low = Math.min(low, y);
                top = Math.max(top, y);
                assertThat(sector.cover(16).stream().anyMatch(box -> holds(box, x, y)))
                        .as("seed %d: %f, %f", seed, x, y)
                        .isTrue();
            }
        }
        assertThat(left).as("seed %d", seed).isCloseTo(0, within(0.02));
        assertThat(low).as("seed %d", seed).isCloseTo(0, within(0.02));
        assertThat(right).as("seed %d", seed).isCloseTo(sector.box().width().mm(), within(0.02));
        assertThat(top).as("seed %d", seed).isCloseTo(sector.box().height().mm(), within(0.02));
    }

    @Test
    void aPictureUprightOnTheBlankIsUprightInItsBox() {
        Sector cup = whole(SampleBlank.cone(88, 62, 101));
        double width = 2 * cup.halfRadians() * cup.middle().mm();
        double height = cup.outer().minus(cup.inner()).mm();
        assertThat(cup.x(0, 0)).isLessThan(cup.x(width, 0));
        assertThat(cup.y(width / 2, height)).isCloseTo(cup.box().height().mm(), within(1e-6));
        // The rim's arc is the outer one, so its ends hang; a blank that widens downwards has them stand up.
        assertThat(cup.y(0, height)).isLessThan(cup.y(width / 2, height));
        Sector bell = whole(SampleBlank.cone(62, 88, 101));
        assertThat(bell.x(0, 0)).isLessThan(bell.x(width, 0));
        assertThat(bell.y(0, height)).isGreaterThan(bell.y(width / 2, height));
        assertThat(bell.y(width / 2, 0)).isCloseTo(0, within(1e-6));
    }

    @Test
    void bleedsAndOverlapMakeItLarger() {
        Sector plain = whole(SampleBlank.cone(88, 62, 101));
        Sector more = whole(SampleBlank.cone(88, 62, 101).overlap(Length.mm(2)).bleeds(Length.mm(3), Length.mm(1)));
        assertThat(more.outer()).isEqualTo(plain.outer().plus(Length.mm(3)));
        assertThat(more.inner()).isEqualTo(plain.inner().minus(Length.mm(1)));
        assertThat(more.middle()).isEqualTo(plain.middle());
        double longer =
                2 * (more.halfRadians() - plain.halfRadians()) * plain.middle().mm();
        assertThat(longer).isCloseTo(2, within(1e-6));
    }

    /** 80 mm at the rim, 2 mm at the foot: 1.8 mm of the pattern are left before the tip. */
    @Test
    void aBleedBeyondTheTipLeavesNothingToPrint() {
        SampleBlank spike = SampleBlank.cone(80, 2, 60);
        assertThat(BandLaw.of(spike.bleeds(Length.ZERO, Length.mm(1)).blank(), OVEN))
                .isPresent();
        assertThat(BandLaw.of(spike.bleeds(Length.ZERO, Length.mm(3)).blank(), OVEN))
                .isEmpty();
    }

    private static boolean holds(Box box, double x, double y) {
        double hair = 1e-6;
        return x >= box.x().mm() - hair
                && x <= box.right().mm() + hair
                && y >= box.y().mm() - hair
                && y <= box.top().mm() + hair;
    }

    private static Sector any(SplittableRandom random) {
        double rim = 50 + 50 * random.nextDouble();
        double foot = rim * (0.5 + random.nextDouble());
        double height = 40 + 150 * random.nextDouble();
        return whole(SampleBlank.cone(rim, foot, height)
                .overlap(Length.mm(3 * random.nextDouble()))
                .bleeds(Length.mm(3 * random.nextDouble()), Length.mm(3 * random.nextDouble())));
    }

    private static Sector whole(SampleBlank blank) {
        return BandLaw.of(blank.blank(), OVEN).orElseThrow().sector().orElseThrow();
    }
}
