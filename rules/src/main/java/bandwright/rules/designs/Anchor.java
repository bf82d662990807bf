package bandwright.rules.designs;

import bandwright.rules.table.Word;

/** What a text box is measured from. */
public enum Anchor implements Word {
    PICTURE("picture"),
    BAND("band");

    private final String word;

    Anchor(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
