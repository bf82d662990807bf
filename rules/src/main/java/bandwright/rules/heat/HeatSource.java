package bandwright.rules.heat;

import bandwright.rules.units.Length;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A press or oven of the shop: a row of heat-sources.csv. Times are whole seconds.
 *
 * @param handleClearance kept free on both sides of a handle
 * @param maxTaper the most that a wall may lean, in degrees a side; empty = any
 * @param positions how often a piece is turned and pressed again to print it all round
 * @param circuit the id of the electrical circuit it hangs on; empty = none is named
 */
public record HeatSource(
        String id,
        String name,
        HeatKind kind,
        int machines,
        Length handleClearance,
        Optional<Length> minDiameter,
        Optional<Length> maxDiameter,
        OptionalDouble maxTaper,
        Optional<Length> maxBandHeight,
        Optional<Length> maxBandWidth,
        int piecesPerLoad,
        int positions,
        int turnSeconds,
        Covering covering,
        int watts,
        String circuit,
        int warmUpSeconds,
        HeatRates rates,
        int loadingSeconds,
        int unloadingSeconds,
        String note) {}
