package bandwright.rules.paper;

import bandwright.rules.table.Word;

/** How transfers are cut apart; a trimmer cuts edge to edge. */
public enum Cutting implements Word {
    SCISSORS("scissors"),
    TRIMMER("trimmer");

    private final String word;

    Cutting(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
