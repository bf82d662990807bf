package bandwright.rules.blanks;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.designs.Placement;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PlacementLawTest {
    /** A mug of the trade in a press: 10 1/4 in round, 8 1/4 in of them printed. Common practice, no source. */
    private static final Band MUG = band(Length.inches(8.25), Length.inches(10.25));

    @ParameterizedTest
    @CsvSource({"HANDLE_RIGHT, 169.86, 79.38", "HANDLE_LEFT, 39.69, 79.38", "OPPOSITE, 104.78, 86.78"})
    void aBoxIsCentredWhereTheEyeIs(Placement placement, String middle, String width) {
        List<Box> boxes = PlacementLaw.boxes(placement, MUG, false);
        assertThat(boxes).hasSize(1);
        Box box = boxes.get(0);
        assertThat(box.x().plus(box.width().half()).mm2()).hasToString(middle);
        assertThat(box.width().mm2()).hasToString(width);
        assertThat(box.height()).isEqualTo(Length.mm(90));
        assertThat(box.y()).as("the foot's bleed lies below the band").isEqualTo(Length.mm(1));
    }

    @Test
    void turningTheCupExchangesLeftAndRight() {
        List<Box> sides = PlacementLaw.boxes(Placement.TWO_SIDED, MUG, false);
        Box left = sides.get(0);
        Box right = sides.get(1);
        assertThat(left.x()).isEqualTo(MUG.around().minus(right.right()));
        assertThat(sides)
                .containsExactly(
                        PlacementLaw.boxes(Placement.HANDLE_LEFT, MUG, false).get(0),
                        PlacementLaw.boxes(Placement.HANDLE_RIGHT, MUG, false).get(0));
    }

    @ParameterizedTest
    @EnumSource(Placement.class)
    void everyPlacementIsTheWholeFlat(Placement placement) {
        assertThat(PlacementLaw.boxes(placement, MUG, true)).containsExactly(Box.of(MUG.around(), MUG.printHeight()));
    }

    @Test
    void allRoundBleedsToo() {
        assertThat(PlacementLaw.boxes(Placement.ALL_ROUND, MUG, false))
                .containsExactly(Box.of(MUG.around(), Length.mm(93)));
    }

    @ParameterizedTest
    @CsvSource({"100", "99.99", "60"})
    void aBandOfHalfTheWallOrLessHasNoSides(double around) {
        Band narrow = band(Length.mm(around), Length.mm(200));
        assertThat(PlacementLaw.boxes(Placement.HANDLE_LEFT, narrow, false)).isEmpty();
        assertThat(PlacementLaw.boxes(Placement.HANDLE_RIGHT, narrow, false)).isEmpty();
        assertThat(PlacementLaw.boxes(Placement.TWO_SIDED, narrow, false)).isEmpty();
        assertThat(PlacementLaw.boxes(Placement.OPPOSITE, narrow, false)).hasSize(1);
    }

    private static Band band(Length around, Length circumference) {
        return new Band(
                around,
                Length.mm(90),
                circumference,
                Length.ZERO,
                Length.mm(2),
                Length.mm(1),
                List.of(),
                Optional.empty());
    }
}
