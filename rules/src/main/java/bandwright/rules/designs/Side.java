package bandwright.rules.designs;

import bandwright.rules.table.Word;

/** The picture of a two-sided design that a text belongs to. */
public enum Side implements Word {
    LEFT("left"),
    RIGHT("right");

    private final String word;

    Side(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
