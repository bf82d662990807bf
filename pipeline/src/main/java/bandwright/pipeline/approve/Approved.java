package bandwright.pipeline.approve;

import bandwright.pipeline.held.Split;
import bandwright.pipeline.size.Unit;
import java.util.List;

/**
 * What may be made, and what waits.
 *
 * @param waiting the units of the rows that wait: what their buyers are to look at
 */
public record Approved(Split<Unit> split, List<Unit> waiting) {
    public Approved {
        waiting = List.copyOf(waiting);
    }
}
