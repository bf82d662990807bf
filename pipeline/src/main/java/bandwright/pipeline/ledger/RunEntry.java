package bandwright.pipeline.ledger;

import bandwright.pipeline.RunId;
import bandwright.pipeline.past.PastHold;
import bandwright.pipeline.past.PastPiece;
import java.util.List;

/**
 * What the ledger keeps of a run.
 *
 * @param contents digests of the dropped files that it was made from
 */
public record RunEntry(RunId run, List<PastPiece> pieces, List<PastHold> holds, List<String> contents) {
    public RunEntry {
        pieces = List.copyOf(pieces);
        holds = List.copyOf(holds);
        contents = List.copyOf(contents);
    }
}
