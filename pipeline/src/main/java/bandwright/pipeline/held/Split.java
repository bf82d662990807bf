package bandwright.pipeline.held;

import java.util.List;

/** What a per-row stage returns: what goes on, and what is set aside. */
public record Split<T>(List<T> made, List<HeldRow> held) {
    public Split {
        made = List.copyOf(made);
        held = List.copyOf(held);
    }
}
