package bandwright.pipeline.held;

import bandwright.pipeline.rows.Row;
import bandwright.pipeline.rows.ShelfOrder;
import bandwright.rules.words.Words;
import java.util.Optional;

/**
 * Pieces of a row that are set aside, with the reason.
 *
 * @param order the order's number; empty where the row has none
 * @param pieces how many pieces of the row wait for it; 0 where the quantity itself is unclear
 */
public record HeldRow(Row row, String order, int pieces, Reason reason) {
    /** The header over the faulty cell, as the row's own file writes it. */
    public String column() {
        return row.headerOf(reason.field()).orElse(reason.field().name());
    }

    /** The same row with the pieces of another that waits for the same reason. */
    public HeldRow and(HeldRow other) {
        return new HeldRow(row, order, pieces + other.pieces, reason);
    }

    /** A question to the buyer, ready to be sent; what is made for the shelf has no buyer. */
    public Optional<String> ask() {
        if (order.isEmpty() || ShelfOrder.is(order)) {
            return Optional.empty();
        }
        return reason.question()
                .map(question -> question.words().isBlank()
                        ? Words.say("held.ask", order, question.needed())
                        : Words.write("held.ask.words", order, question.words().strip(), question.needed()));
    }
}
