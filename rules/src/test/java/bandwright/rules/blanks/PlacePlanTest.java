package bandwright.rules.blanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.rules.designs.Placement;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.sample.SampleBlank;
import bandwright.rules.sample.SampleHeatSource;
import bandwright.rules.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlacePlanTest {
    private static final HeatSource PRESS = SampleHeatSource.of(HeatKind.MUG_PRESS)
            .clearance(Length.inches(0.5))
            .source();

    /** 10 1/4 in round, 1 in of handle, 1/2 in of clearance: common practice, no source. */
    private static PlacePlan mug(Placement placement) {
        SampleBlank mug =
                SampleBlank.cylinder(Length.inches(10.25), Length.inches(3.75)).handle(Length.inches(1));
        return PlacePlan.of(mug.blank(), BandLaw.of(mug.blank(), PRESS).orElseThrow(), placement);
    }

    @Test
    void theBandLeavesTheGapAtTheHandle() {
        PlacePlan plan = mug(Placement.ALL_ROUND);
        assertThat(plan.band().from()).isCloseTo(1 / 10.25, within(1e-6));
        assertThat(plan.band().to()).isCloseTo(9.25 / 10.25, within(1e-6));
        assertThat(plan.pictures()).containsExactly(plan.band());
    }

    @Test
    void oppositeIsOppositeTheHandle() {
        assertThat(mug(Placement.OPPOSITE).pictures().get(0).middle()).isCloseTo(0.5, within(1e-6));
    }

    @Test
    void theSidesFaceWhoHoldsTheHandle() {
        // With the handle on your right you look at the wall a quarter turn on from opposite, to its right.
        assertThat(mug(Placement.HANDLE_RIGHT).pictures().get(0).middle()).isCloseTo(0.75, within(1e-6));
        assertThat(mug(Placement.HANDLE_LEFT).pictures().get(0).middle()).isCloseTo(0.25, within(1e-6));
        assertThat(mug(Placement.TWO_SIDED).pictures())
                .isEqualTo(List.of(
                        mug(Placement.HANDLE_LEFT).pictures().get(0),
                        mug(Placement.HANDLE_RIGHT).pictures().get(0)));
    }

    /** Turned by half, the cup shows its left-hand picture where its right-hand one was. */
    @ParameterizedTest
    @EnumSource(Placement.class)
    void turningTheCupExchangesLeftAndRight(Placement placement) {
        double turned = (mug(Placement.HANDLE_LEFT).pictures().get(0).middle() + 0.5) % 1;
        assertThat(turned)
                .isCloseTo(mug(Placement.HANDLE_RIGHT).pictures().get(0).middle(), within(1e-6));
        for (PlacePlan.Stretch picture : mug(placement).pictures()) {
            assertThat(picture.from())
                    .isGreaterThanOrEqualTo(mug(placement).band().from() - 1e-9);
            assertThat(picture.to()).isLessThanOrEqualTo(mug(placement).band().to() + 1e-9);
        }
    }
}
