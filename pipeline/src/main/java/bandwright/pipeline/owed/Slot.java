package bandwright.pipeline.owed;

import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.past.Signature;
import bandwright.pipeline.rows.Row;
import bandwright.rules.orders.OrderField;
import java.util.ArrayList;
import java.util.List;

/** One piece that a line orders. */
record Slot(MatchedLine line, int piece, Signature signature) {
    static List<Slot> of(MatchedLine line) {
        List<Slot> slots = new ArrayList<>();
        for (int piece = 1; piece <= line.line().quantity(); piece++) {
            slots.add(new Slot(line, piece, signature(line)));
        }
        return slots;
    }

    private static Signature signature(MatchedLine line) {
        return Signature.of(
                line.blank().sku(), line.design().name(), line.line().texts());
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
        return words(line);
    }

    static String words(MatchedLine line) {
        StringBuilder words =
                new StringBuilder(line.blank().sku() + ", " + line.design().name());
        line.line()
                .texts()
                .forEach((field, text) ->
                        words.append(", ").append(field).append(": ").append(text));
        return words.toString();
    }

    /** The field whose cell differs from what was printed, as far as one can tell. */
    OrderField changedField(List<PastPiece> printed) {
        boolean isSameBlank = printed.stream()
                .anyMatch(piece -> piece.blank().equals(line.blank().sku()));
        if (!isSameBlank) {
            return OrderField.SKU;
        }
        return line.line().texts().isEmpty() ? OrderField.DESIGN : OrderField.PERSONALISATION;
    }
}
