package bandwright.pipeline.write.setup;

import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;

/**
 * How a strip lies on sheets of paper: whole on one, along it or turned, or else over several whose edges lap. 400 x 90 mm
 * on a sheet that takes 266 x 203 mm: two sheets side by side, 10 mm of the first repeated on the second.
 *
 * @param columns sheets side by side
 * @param rows sheets one above the other
 */
record Tiles(boolean isTurned, double width, double height, int columns, int rows) {
    /** What two neighbours both show, to be laid on each other. [J] */
    static final double LAP = 10;

    /** Nobody glues more. [J] */
    static final int MOST = 24;

    private static final double LEAST_ROOM = 60;

    static Tiles of(Box shape, PaperRoom room) {
        Tiles upright = of(shape, room, false);
        Tiles turned = of(shape, room, true);
        return turned.count() < upright.count() ? turned : upright;
    }

    private static Tiles of(Box shape, PaperRoom room, boolean isTurned) {
        double across = room.inside().width().mm();
        double up = room.inside().height().mm();
        double width = isTurned ? up : across;
        double height = isTurned ? across : up;
        return new Tiles(
                isTurned,
                width,
                height,
                pieces(shape.width().mm(), width),
                pieces(shape.height().mm(), height));
    }

    private static int pieces(double length, double room) {
        if (length <= room) {
            return 1;
        }
        return room < LEAST_ROOM ? MOST + 1 : (int) Math.ceil((length - LAP) / (room - LAP));
    }

    int count() {
        return columns * rows;
    }

    boolean isOne() {
        return count() == 1;
    }

    boolean isTooMany() {
        return count() > MOST;
    }

    /** Where a column's sheet begins on the strip. */
    double left(int column) {
        return column * (width - LAP);
    }

    /** Where a row's sheet begins on the strip, the lowest first. */
    double lower(int row) {
        return row * (height - LAP);
    }
}
