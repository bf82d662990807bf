package bandwright.pipeline.tile;

import bandwright.rules.paper.PaperRoom;
import java.util.List;

/** One page of paper with transfers on it. */
public record Sheet(PaperRoom room, List<Placed> placed) {
    public Sheet {
        placed = List.copyOf(placed);
    }
}
