package bandwright.pipeline.owed;

import bandwright.pipeline.match.MatchedLine;
import java.util.List;
import java.util.Optional;

/** An order line and those of its pieces that are to be made. */
public record OwedLine(MatchedLine matched, List<OwedPiece> pieces) {
    public OwedLine {
        pieces = List.copyOf(pieces);
    }

    /** A line of which nothing was made yet. */
    public static OwedLine whole(MatchedLine matched) {
        List<OwedPiece> pieces = Slot.of(matched).stream()
                .map(slot -> new OwedPiece(
                        slot.piece(), slot.texts(), slot.signature(), RowContent.of(slot.row()), Optional.empty()))
                .toList();
        return new OwedLine(matched, pieces);
    }
}
