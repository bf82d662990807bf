package bandwright.rules.blanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.rules.designs.Placement;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.sample.SampleBlank;
import bandwright.rules.sample.SampleHeatSource;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a printed picture is seen, held against the places that placements have of their own. */
final class BodyTest {
    private final Blank mug = SampleBlank.cylinder(Length.mm(260.35), Length.mm(101.6))
            .handle(Length.mm(25.4))
            .blank();
    private final Band band = band(mug, 12.7);
    private final Body body = Body.of(mug, band).orElseThrow();

    /** The check value of a mug 10 1/4 in round: pictures beside the handle are centred at 39.69 and 169.86 mm. */
    @Test
    void whatStandsBesideTheHandleIsSeenInTheMiddle() {
        List<Box> boxes = PlacementLaw.boxes(Placement.TWO_SIDED, band, false);
        assertThat(body.fromLeft(0, Body.From.HANDLE_LEFT)).isCloseTo(middle(boxes.get(0)), within(0.001));
        assertThat(body.fromLeft(0, Body.From.HANDLE_RIGHT)).isCloseTo(middle(boxes.get(1)), within(0.001));
        assertThat(body.fromLeft(0, Body.From.FRONT))
                .isCloseTo(band.around().half().mm(), within(0.001));
        assertThat(body.fromLeft(0, Body.From.HANDLE_RIGHT)).isCloseTo(169.86, within(0.005));
    }

    private static Band band(Blank blank, double clearance) {
        return BandLaw.of(
                        blank,
                        SampleHeatSource.of(HeatKind.OVEN)
                                .clearance(Length.mm(clearance))
                                .source())
                .orElseThrow();
    }

    private static double middle(Box box) {
        return box.x().plus(box.width().half()).mm();
    }

    @Test
    void atTheHandleNothingIsPrinted() {
        assertThat(body.fromLeft(Math.PI / 2, Body.From.HANDLE_RIGHT)).isNaN();
        assertThat(body.fromLeft(-Math.PI / 2, Body.From.HANDLE_LEFT)).isNaN();
        assertThat(body.fromLeft(Math.PI, Body.From.FRONT)).isNaN();
        assertThat(body.fromTop(body.height() - 0.001)).isNotNaN();
        assertThat(body.fromTop(body.height() + 1)).isNaN();
        assertThat(body.fromTop(-1)).isNaN();
    }

    /** A quarter turn of the cup brings what was at the side to the front: left and right are exchanged by turning it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void turningTheCupMovesThePictureByAQuarter(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            double angle = (random.nextDouble() - 0.5) * Math.PI;
            double front = body.fromLeft(angle, Body.From.FRONT);
            double right = body.fromLeft(angle - Math.PI / 2, Body.From.HANDLE_RIGHT);
            double left = body.fromLeft(angle + Math.PI / 2, Body.From.HANDLE_LEFT);
            assertThat(Double.isNaN(front)).as("seed %d", seed).isEqualTo(Double.isNaN(right));
            if (!Double.isNaN(front)) {
                assertThat(right).as("seed %d", seed).isCloseTo(front, within(1e-9));
                assertThat(left).as("seed %d", seed).isCloseTo(front, within(1e-9));
            }
        }
    }

    /** The wall of a cone is longer than the cone is high. */
    @Test
    void onAConeMillimetresAreCountedAlongTheWall() {
        Blank cone = SampleBlank.cone(88, 62, 101)
                .margins(Length.mm(3), Length.mm(8))
                .handle(Length.mm(22))
                .blank();
        Body wall = Body.of(cone, band(cone, 11.7)).orElseThrow();
        double slant = Math.hypot(101, 13);
        assertThat(wall.fromTop(101 - 3.5 * 101 / slant)).isCloseTo(0.5, within(0.001));
        assertThat(wall.fromTop(101 - 2.9 * 101 / slant)).isNaN();
        assertThat(wall.fromTop(50.5)).isCloseTo(slant / 2 - 3, within(0.001));
        assertThat(wall.radius(0)).isCloseTo(31, within(0.001));
        assertThat(wall.radius(101)).isCloseTo(44, within(0.001));
    }
}
