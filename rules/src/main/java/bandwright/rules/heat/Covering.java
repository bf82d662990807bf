package bandwright.rules.heat;

import bandwright.rules.table.Word;

/** What goes over the transfer while it is heated. */
public enum Covering implements Word {
    PROTECTIVE_PAPER("protective paper"),
    SHRINK_SLEEVE("shrink sleeve"),
    NONE("none");

    private final String word;

    Covering(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
