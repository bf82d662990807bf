package bandwright.pipeline.past;

import java.util.List;

/**
 * How many pieces were made and how they turned out.
 *
 * @param pieces all that were made, the spoiled ones too
 * @param reasons why pieces were spoiled, the most frequent first
 */
public record Turnout(int pieces, int spoiled, List<Why> reasons) {
    /** A reason and how many pieces were spoiled for it. */
    public record Why(String reason, int pieces) {}

    public Turnout {
        reasons = List.copyOf(reasons);
        if (spoiled < 0 || spoiled > pieces) {
            throw new IllegalArgumentException(spoiled + " of " + pieces + " spoiled");
        }
    }
}
