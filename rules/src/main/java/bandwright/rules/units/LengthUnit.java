package bandwright.rules.units;

/** The unit that a bare number in a cell is in, and that a shop reads first. */
public enum LengthUnit {
    IN("in"),
    MM("mm"),
    CM("cm");

    private final String word;

    LengthUnit(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
