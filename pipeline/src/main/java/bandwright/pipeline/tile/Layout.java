package bandwright.pipeline.tile;

import java.util.List;

/** How one sheet is laid out; sheets of one layout are cut alike. */
record Layout(List<Spot> spots) {
    /** A picture of a kind: the pose is the kind's n-th, x and y are the picture's corner on the field. */
    record Spot(int kind, int pose, long x, long y) {}

    Layout {
        spots = List.copyOf(spots);
    }

    int[] counts(int kinds) {
        int[] counts = new int[kinds];
        for (Spot spot : spots) {
            counts[spot.kind()]++;
        }
        return counts;
    }
}
