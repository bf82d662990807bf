package bandwright.pipeline.tile;

import java.util.List;

/**
 * All sheets of a run.
 *
 * @param atLeast a proven lower bound on the number of sheets
 */
public record Tiled(List<Sheet> sheets, int atLeast) {
    public Tiled {
        sheets = List.copyOf(sheets);
    }
}
