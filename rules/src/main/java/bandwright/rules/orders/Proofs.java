package bandwright.rules.orders;

import bandwright.rules.table.Word;

/** Which orders get a proof picture. */
public enum Proofs implements Word {
    COLOURED("coloured"),
    ALL("all"),
    NONE("none");

    private final String word;

    Proofs(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
