package bandwright.pipeline.owed;

import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.Piece;
import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.past.Signature;
import bandwright.pipeline.rows.Row;
import bandwright.rules.orders.OrderField;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** One piece that a line orders. */
record Slot(MatchedLine line, int piece, SortedMap<String, String> texts, Signature signature) {
    static List<Slot> of(MatchedLine line) {
        Map<SortedMap<String, String>, Signature> signatures = new HashMap<>();
        List<Slot> slots = new ArrayList<>();
        for (Piece piece : line.pieces()) {
            Signature signature = signatures.computeIfAbsent(
                    piece.texts(),
                    texts -> Signature.of(line.blank().sku(), line.design().name(), texts));
            slots.add(new Slot(line, piece.number(), piece.texts(), signature));
        }
        return slots;
    }

    Row row() {
        return line.line().row();
    }

    String file() {
        return row().from().file();
    }

    /** Whether it is the very piece that was printed. */
    boolean isOf(PastPiece printed) {
        return printed.line().equals(line.line().line()) && printed.piece() == piece;
    }

    /** What it is, for a person: MUG-11-W, tern, name: Ada. */
    String words() {
        return words(line, texts);
    }

    static String words(MatchedLine line, SortedMap<String, String> texts) {
        StringBuilder words =
                new StringBuilder(line.blank().sku() + ", " + line.design().name());
        texts.forEach(
                (field, text) -> words.append(", ").append(field).append(": ").append(text));
        return words.toString();
    }

    /** The field whose cell differs from what was printed, as far as one can tell. */
    OrderField changedField(List<PastPiece> printed) {
        boolean isSameBlank = printed.stream()
                .anyMatch(piece -> piece.blank().equals(line.blank().sku()));
        if (!isSameBlank) {
            return OrderField.SKU;
        }
        return texts.isEmpty() ? OrderField.DESIGN : OrderField.PERSONALISATION;
    }
}
