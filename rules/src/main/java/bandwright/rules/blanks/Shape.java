package bandwright.rules.blanks;

import bandwright.rules.table.Word;

/** The body of a blank, as the cell names it. */
enum Shape implements Word {
    CYLINDER("cylinder"),
    CONE("cone"),
    FLAT("flat");

    private final String word;

    Shape(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
