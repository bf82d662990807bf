package bandwright.pipeline.docs;

import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import java.util.Optional;

/** The rulebook that comes with the program. */
final class BuiltIn {
    private static final Rulebook RULES = read();

    private BuiltIn() {}

    static Rulebook rules() {
        return RULES;
    }

    private static Rulebook read() {
        try {
            return Rulebook.read(Optional.empty());
        } catch (RulebookFaults e) {
            throw new IllegalStateException(e);
        }
    }
}
