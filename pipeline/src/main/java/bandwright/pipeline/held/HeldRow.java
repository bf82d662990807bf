package bandwright.pipeline.held;

import bandwright.pipeline.rows.Row;
import bandwright.rules.words.Words;
import java.util.Optional;

/**
 * Pieces of a row that are set aside, with the reason.
 *
 * @param order the order's number; empty where the row has none
 * @param pieces how many pieces of the row wait for it; 0 where the quantity itself is unclear
 */
public record HeldRow(Row row, String order, int pieces, Reason reason) {
    /** The order that the shop gives itself. */
    private static final String STOCK = "STOCK";

    /** The header over the faulty cell, as the row's own file writes it. */
    public String column() {
        return row.headerOf(reason.field()).orElse(reason.field().name());
    }

    /** A question to the buyer, ready to be sent; what is made for the shelf has no buyer. */
    public Optional<String> ask() {
        if (order.isEmpty() || order.equalsIgnoreCase(STOCK)) {
            return Optional.empty();
        }
        return reason.question()
                .map(question -> question.words().isBlank()
                        ? Words.say("held.ask", order, question.needed())
                        : Words.say("held.ask.words", order, question.words().strip(), question.needed()));
    }
}
