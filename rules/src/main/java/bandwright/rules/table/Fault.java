package bandwright.rules.table;

/** One fault in a table of the rulebook: where it is, what is wrong, what to do. */
public record Fault(Place place, String message, String cure) {
    public Fault {
        if (cure.isBlank()) {
            throw new IllegalArgumentException("a fault without a cure: " + message);
        }
    }
}
