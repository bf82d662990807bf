package bandwright.rules.designs;

import bandwright.rules.table.Word;

/** How a line of text stands in its box. */
public enum Align implements Word {
    LEFT("left"),
    CENTRE("centre"),
    RIGHT("right");

    private final String word;

    Align(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
