package bandwright.rules.blanks;

import bandwright.rules.table.Word;

/** What the wall of a blank is made of, under its coating. */
public enum Material implements Word {
    CERAMIC("ceramic"),
    GLASS("glass"),
    METAL("metal"),
    POLYMER("polymer"),
    WOOD("wood"),
    FABRIC("fabric");

    private final String word;

    Material(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
