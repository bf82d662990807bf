package bandwright.pipeline.ledger;

import bandwright.pipeline.RunId;
import bandwright.pipeline.past.PastHold;
import bandwright.pipeline.past.PastPiece;
import java.util.List;

/** What the ledger keeps of a run. */
public record RunEntry(RunId run, List<PastPiece> pieces, List<PastHold> holds) {
    public RunEntry {
        pieces = List.copyOf(pieces);
        holds = List.copyOf(holds);
    }
}
