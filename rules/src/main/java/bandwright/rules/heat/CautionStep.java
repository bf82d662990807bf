package bandwright.rules.heat;

import bandwright.rules.table.Word;

/** The step of the work that a caution stands before. */
public enum CautionStep implements Word {
    DAY("day"),
    PREPARE("prepare"),
    TAPE("tape"),
    LOAD("load"),
    PRESS("press"),
    PEEL("peel"),
    COOL("cool"),
    PACK("pack");

    private final String word;

    CautionStep(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
