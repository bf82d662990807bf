package bandwright.pipeline.tile;

import bandwright.pipeline.size.Unit;
import bandwright.rules.units.Box;
import java.util.List;
import java.util.Optional;

/**
 * One transfer on a sheet, in millimetres of the printed paper from its lower-left corner.
 *
 * @param box the printed picture as it lies on the paper; of a cone's, its sector's bounding box
 * @param flag the paper of the label flag, from the cut line outwards, or the box of one that leans; empty where the shop
 *     has none
 */
public record Placed(Unit unit, int load, Box box, Rotation rotation, Optional<Box> flag) {
    private static final int COLUMNS = 24;

    /** How a cone's picture lies; empty where the picture is its box. */
    public Optional<LaidSector> sector() {
        return unit.transfer().sector().map(sector -> new LaidSector(sector, box, rotation));
    }

    /** Boxes that hold what is printed: the picture's box, or the columns of a cone's sector. */
    public List<Box> covers() {
        return unit.transfer()
                .sector()
                .map(sector -> sector.cover(COLUMNS).stream()
                        .map(column -> rotation.turned(column, sector.box()).shifted(box.x(), box.y()))
                        .toList())
                .orElse(List.of(box));
    }
}
