package bandwright.pipeline.held;

import bandwright.rules.orders.OrderField;
import java.util.Optional;

/**
 * Why a row is set aside for a person, and what that person does about it. Each stage seals its own reasons in one
 * file; the wording stands in words.properties.
 */
public interface Reason {
    /** The code that docs/held.md lists: artwork-missing. */
    String code();

    /** The field whose cell is at fault. */
    OrderField field();

    /** What is wrong, in one line. */
    String message();

    /** What to do about it, in one line. */
    String cure();

    /** What to ask the buyer, where nobody else knows the cure. */
    default Optional<Question> question() {
        return Optional.empty();
    }
}
