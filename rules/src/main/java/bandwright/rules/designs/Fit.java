package bandwright.rules.designs;

import bandwright.rules.table.Word;

/** How a picture fills its box: the words of CSS object-fit. */
public enum Fit implements Word {
    CONTAIN("contain"),
    COVER("cover"),
    FILL("fill");

    private final String word;

    Fit(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
