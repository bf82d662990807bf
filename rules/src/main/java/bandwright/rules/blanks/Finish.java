package bandwright.rules.blanks;

import bandwright.rules.table.Word;

/** What the coated surface looks like. */
public enum Finish implements Word {
    GLOSS("gloss"),
    MATTE("matte"),
    GLITTER("glitter"),
    FROSTED("frosted"),
    METALLIC("metallic"),
    COLOUR_CHANGING("colour-changing");

    private final String word;

    Finish(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
