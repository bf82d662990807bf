package bandwright.rules.blanks;

import bandwright.rules.table.Word;

/** Whether anything can be seen through the blank. */
public enum Backing implements Word {
    OPAQUE("opaque"),
    CLEAR("clear");

    private final String word;

    Backing(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
