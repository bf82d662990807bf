package bandwright.pipeline.tile;

import bandwright.pipeline.size.Unit;
import bandwright.rules.units.Box;
import java.util.Optional;

/**
 * One transfer on a sheet, in millimetres of the printed paper from its lower-left corner.
 *
 * @param box the printed picture as it lies on the paper
 * @param flag the paper of the label flag, from the cut line outwards; empty where the shop has none
 */
public record Placed(Unit unit, int load, Box box, Rotation rotation, Optional<Box> flag) {}
