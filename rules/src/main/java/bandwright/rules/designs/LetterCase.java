package bandwright.rules.designs;

import bandwright.rules.table.Word;

/** What becomes of the letters as typed. */
public enum LetterCase implements Word {
    UPPER("upper"),
    LOWER("lower"),
    TITLE("title");

    private final String word;

    LetterCase(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
