package bandwright.rules.paper;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.units.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sheet of 200 x 300 mm with margins of 5 mm: ink has 190 x 290 mm. The flag needs 2 + 14 mm of paper, 12 mm of ink. */
class PaperLawTest {
    private static final FlagLaw FLAG = new FlagLaw(Length.mm(2), Length.mm(14), Length.mm(30), Length.mm(2));
    private static final FlagLaw NO_FLAG = new FlagLaw(Length.mm(2), Length.ZERO, Length.mm(30), Length.mm(2));

    @ParameterizedTest
    @CsvSource({
        "178, 290, true", // 178 + 12 = 190 across
        "178.1, 290, false", // neither across (190.1) nor up the page (290 > 190)
        "278, 190, true", // turned: 278 + 12 = 290
        "278.1, 190, false",
        "278, 190.1, false",
        "10, 10, true",
        "300, 10, false",
    })
    void theFlagsInkStaysInsideTheMarginsInEitherOrientation(double width, double height, boolean takes) {
        assertThat(PaperLaw.takes(room(5), Footprint.straight(Length.mm(width), Length.mm(height), FLAG)))
                .isEqualTo(takes);
    }

    @Test
    void theFlagsPaperStaysOnThePage() {
        // Without margins the ink's 12 mm would fit beside 186 mm, but the flag's 16 mm of paper would not.
        assertThat(PaperLaw.takes(room(0), Footprint.straight(Length.mm(184), Length.mm(250), FLAG)))
                .isTrue();
        assertThat(PaperLaw.takes(room(0), Footprint.straight(Length.mm(184.1), Length.mm(250), FLAG)))
                .isFalse();
    }

    @Test
    void theFlagMayHangOnTheEndWithTheWiderMargin() {
        Paper paper = paper(0, 10);
        // 178 + 12 = 190 of ink between 0 and 190; the paper of the flag reaches to 194 over the right margin.
        assertThat(PaperLaw.takes(
                        PaperRoom.of(paper, printer()), Footprint.straight(Length.mm(178), Length.mm(200), FLAG)))
                .isTrue();
        Paper turned = paper(10, 0);
        assertThat(PaperLaw.takes(
                        PaperRoom.of(turned, printer()), Footprint.straight(Length.mm(178), Length.mm(200), FLAG)))
                .isTrue();
    }

    @Test
    void aShopWithoutFlagsUsesTheWholeRoom() {
        assertThat(PaperLaw.takes(room(5), Footprint.straight(Length.mm(190), Length.mm(290), NO_FLAG)))
                .isTrue();
        assertThat(PaperLaw.takes(room(5), Footprint.straight(Length.mm(190.1), Length.mm(290), NO_FLAG)))
                .isFalse();
    }

    @Test
    void aFlagHigherThanThePictureStillKeepsItsInkInside() {
        FlagLaw high = new FlagLaw(Length.mm(2), Length.mm(14), Length.mm(204), Length.mm(2));
        // 200 mm of ink fit up the page only, so the picture lies across it.
        assertThat(PaperLaw.takes(room(5), Footprint.straight(Length.mm(178), Length.mm(20), high)))
                .isTrue();
        assertThat(PaperLaw.takes(room(5), Footprint.straight(Length.mm(179), Length.mm(20), high)))
                .isFalse();
    }

    @Test
    void aRollTakesWhatFitsItsWidthAndItsLongestPage() {
        Paper roll = new Paper(
                "roll",
                "",
                Length.mm(210),
                Optional.empty(),
                Optional.of(Length.mm(914)),
                Length.ZERO,
                Length.mm(5),
                Length.ZERO,
                Length.mm(5),
                Optional.empty(),
                "");
        // 898 mm of picture, 2 mm of border and 14 mm of flag make the longest page of 914 mm.
        assertThat(takes(roll, 898, 200)).isTrue();
        assertThat(takes(roll, 898, 200.1)).isFalse();
        assertThat(takes(roll, 899, 200)).isFalse();
    }

    private static boolean takes(Paper roll, double width, double height) {
        return PaperLaw.takes(
                PaperRoom.of(roll, printer()), Footprint.straight(Length.mm(width), Length.mm(height), FLAG));
    }

    private static PaperRoom room(double margin) {
        return PaperRoom.of(paper(margin, margin), printer());
    }

    private static Paper paper(double left, double right) {
        return new Paper(
                "pad",
                "",
                Length.mm(200),
                Optional.of(Length.mm(300)),
                Optional.empty(),
                Length.mm(Math.min(left, right)),
                Length.mm(right),
                Length.mm(Math.min(left, right)),
                Length.mm(left),
                Optional.empty(),
                "");
    }

    private static Printer printer() {
        return new Printer(
                "desk", List.of("pad"), Optional.empty(), MirrorBy.FILE, Optional.empty(), Optional.empty(), 1, 1, "");
    }
}
