package bandwright.rules.table;

import bandwright.rules.words.Words;

/** One fault in a table of the rulebook: where it is, what is wrong, what to do. */
public record Fault(Place place, String message, String cure) {
    public Fault {
        if (cure.isBlank()) {
            throw new IllegalArgumentException("a fault without a cure: " + message);
        }
    }

    /** The whole of it in one line: blanks.csv, row 7, column shape: what is wrong. What to do. */
    public String line() {
        return Words.say("rules.fault", place.say(), message, cure);
    }
}
