package bandwright.rules.paper;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.sample.SampleShop;
import bandwright.rules.units.Length;
import org.junit.jupiter.api.Test;

class FlagLawTest {
    private static FlagLaw flag(double border, double gap, double depth, double height) {
        return FlagLaw.of(SampleShop.withFlag(Length.mm(border), Length.mm(gap), Length.mm(depth), Length.mm(height)));
    }

    @Test
    void theBuiltInFlagReachesSixteenMillimetresFromThePicture() {
        FlagLaw flag = flag(2, 4, 14, 30);
        assertThat(flag.hasFlag()).isTrue();
        assertThat(flag.reach()).isEqualTo(Length.mm(16));
        assertThat(flag.height()).isEqualTo(Length.mm(30));
    }

    @Test
    void inkOnTheFlagKeepsTheGapFromItsOwnPictureAndFromTheNextOne() {
        FlagLaw flag = flag(2, 4, 14, 30);
        // Its own picture is the border away from the flag, and the next one may stand the border away from its end.
        assertThat(flag.border().plus(flag.inset())).isEqualTo(Length.mm(4));
        assertThat(flag.inkReach()).isEqualTo(Length.mm(2 + 2 + 8));
    }

    @Test
    void aBorderAsWideAsTheGapNeedsNoInset() {
        assertThat(flag(5, 4, 14, 30).inset()).isEqualTo(Length.ZERO);
        assertThat(flag(0, 4, 14, 30).inset()).isEqualTo(Length.mm(4));
    }

    @Test
    void aShallowFlagHasAsMuchInkAsItHasRoomFor() {
        assertThat(flag(2, 4, 10, 30).inkReach()).isEqualTo(Length.mm(2 + 2 + 6));
        assertThat(flag(2, 4, 4, 30).inkReach()).isEqualTo(Length.ZERO);
        assertThat(flag(2, 4, 1, 30).inkReach()).isEqualTo(Length.ZERO);
    }

    @Test
    void inkNeverReachesBeyondTheFlag() {
        for (double depth = 0; depth < 30; depth += 0.5) {
            for (double gap = 0; gap < 12; gap += 1.5) {
                FlagLaw flag = flag(2, gap, depth, 30);
                assertThat(flag.inkReach()).as("depth %s, gap %s", depth, gap).isLessThanOrEqualTo(flag.reach());
            }
        }
    }

    @Test
    void aHeightOrDepthOfNothingIsNoFlag() {
        for (FlagLaw none : new FlagLaw[] {flag(2, 4, 14, 0), flag(2, 4, 0, 30)}) {
            assertThat(none.hasFlag()).isFalse();
            assertThat(none.reach()).isEqualTo(Length.ZERO);
            assertThat(none.inkReach()).isEqualTo(Length.ZERO);
        }
    }
}
