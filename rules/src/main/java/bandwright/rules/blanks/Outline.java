package bandwright.rules.blanks;

import bandwright.rules.table.Word;

/** The outline of a flat blank. */
public enum Outline implements Word {
    RECTANGLE("rectangle"),
    ROUND("round");

    private final String word;

    Outline(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
