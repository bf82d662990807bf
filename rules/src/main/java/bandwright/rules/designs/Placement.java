package bandwright.rules.designs;

import bandwright.rules.table.Word;

/** Where on the band a picture stands. */
public enum Placement implements Word {
    ALL_ROUND("all round"),
    OPPOSITE("opposite"),
    HANDLE_LEFT("handle-left"),
    HANDLE_RIGHT("handle-right"),
    TWO_SIDED("two-sided");

    private final String word;

    Placement(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
