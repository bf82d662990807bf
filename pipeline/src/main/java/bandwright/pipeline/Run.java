package bandwright.pipeline;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.intake.Orders;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.load.PressDay;
import bandwright.pipeline.owed.Owed;
import bandwright.pipeline.past.Past;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Tiled;
import java.util.List;

/**
 * All that was decided, before a byte is written.
 *
 * @param past what was made of its orders before
 * @param owed what of it was still to make
 * @param units in the order of their rows
 * @param sights the views of its pictures, as far as they were looked at
 * @param waiting what is held until its buyer approves it: it is shown, not made
 * @param held all held rows, of every stage, in the order of their rows
 */
public record Run(
        RunId id,
        Orders orders,
        Past past,
        Owed owed,
        List<Unit> units,
        List<Unit> waiting,
        List<HeldRow> held,
        List<SkippedRow> skipped,
        PressDay day,
        Tiled tiled,
        Sights sights) {
    public Run {
        units = List.copyOf(units);
        waiting = List.copyOf(waiting);
        held = List.copyOf(held);
        skipped = List.copyOf(skipped);
    }

    public List<Load> loads() {
        return day.loads();
    }
}
