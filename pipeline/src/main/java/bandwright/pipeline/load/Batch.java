package bandwright.pipeline.load;

import bandwright.pipeline.size.Unit;
import java.util.List;

/**
 * The pieces of one load, before it has its time.
 *
 * @param isFirst whether it is the first piece of its blank, alone before the others
 * @param waitsFor the load of the same series that must be out before this one goes in, as its place in the series; -1 =
 *     none
 */
record Batch(List<Unit> units, boolean isFirst, int waitsFor) {
    Batch {
        units = List.copyOf(units);
    }
}
