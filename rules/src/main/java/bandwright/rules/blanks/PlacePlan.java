package bandwright.rules.blanks;

import bandwright.rules.designs.Placement;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.List;

/**
 * Where on a cup its pictures come to stand, as shares of the way round it: 0 and 1 are the middle of the handle (or the
 * seam), 1/2 is opposite it. From the left to the right as seen from outside, which seen from above is counter-clockwise.
 * What is opposite the handle of a mug stands from 0.33 to 0.67.
 *
 * @param band where the band begins and ends
 * @param pictures where each picture does, the left one first
 */
public record PlacePlan(boolean hasHandle, Stretch band, List<Stretch> pictures) {
    public PlacePlan {
        pictures = List.copyOf(pictures);
    }

    /** A part of the way round. */
    public record Stretch(double from, double to) {
        public double middle() {
            return (from + to) / 2;
        }
    }

    /** The plan of a round blank; of a flat one with the flat's width as the way round. */
    public static PlacePlan of(Blank blank, Band band, Placement placement) {
        boolean isFlat = blank.form().isFlat();
        double round = isFlat ? band.around().mm() : band.circumference().mm();
        // The white at the handle, half of it at either end; what a narrow heat source cuts off is white as well.
        double left = (round - band.around().mm()) / 2;
        List<Stretch> pictures = PlacementLaw.boxes(placement, band, isFlat).stream()
                .map(box -> stretch(left, box, round))
                .toList();
        Box whole = Box.of(band.around(), Length.ZERO);
        return new PlacePlan(blank.hasHandle(), stretch(left, whole, round), pictures);
    }

    private static Stretch stretch(double left, Box box, double round) {
        return new Stretch((left + box.x().mm()) / round, (left + box.right().mm()) / round);
    }
}
