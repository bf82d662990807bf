package bandwright.rules.heat;

import bandwright.rules.table.Word;

/** Whether a material may go into a kind of heat source. */
public enum Allowed implements Word {
    YES("yes"),
    NO("no"),
    IF_LISTED("if listed");

    private final String word;

    Allowed(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
