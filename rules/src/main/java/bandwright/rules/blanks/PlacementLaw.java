package bandwright.rules.blanks;

import bandwright.rules.designs.Placement;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.List;

/**
 * Where on a band a design's pictures stand, counted from the band's left end as seen from outside, upright.
 *
 * <p>On a mug of 260.35 mm round with a handle gap of 50.8 mm the band is 209.55 mm; what you see with the handle on
 * your right is centred a quarter of the circumference right of its middle, at 169.86 mm, 79.375 mm wide; with the handle
 * on your left at 39.69 mm. Opposite the handle a picture takes a third of the circumference at most. Without a handle
 * the seam stands where the handle would.
 */
public final class PlacementLaw {
    private PlacementLaw() {}

    /**
     * The boxes in the printed picture, the left one first; none if nothing is left of one. Only all round, and on a
     * flat, a picture bleeds.
     *
     * @param isFlat every placement is the whole flat
     */
    public static List<Box> boxes(Placement placement, Band band, boolean isFlat) {
        if (isFlat) {
            return List.of(Box.of(band.around(), band.printHeight()));
        }
        Length width = band.around();
        // A band of less than half the wall, as a wide handle or a narrow press leaves it, has no sides.
        Length side = width.minus(band.circumference().half()).atLeast(Length.ZERO);
        Length quarter = band.circumference().half().half();
        List<Box> boxes =
                switch (placement) {
                    case ALL_ROUND -> List.of(Box.of(width, band.printHeight()));
                    case OPPOSITE ->
                        List.of(centred(
                                band,
                                width.half(),
                                width.atMost(band.circumference().times(1 / 3.0))));
                    case HANDLE_LEFT -> List.of(centred(band, width.half().minus(quarter), side));
                    case HANDLE_RIGHT -> List.of(centred(band, width.half().plus(quarter), side));
                    case TWO_SIDED ->
                        List.of(
                                centred(band, width.half().minus(quarter), side),
                                centred(band, width.half().plus(quarter), side));
                };
        return boxes.stream().allMatch(box -> box.width().isPositive()) ? boxes : List.of();
    }

    private static Box centred(Band band, Length middle, Length width) {
        return new Box(middle.minus(width.half()), band.bleedBottom(), width, band.up());
    }
}
