package bandwright.rules.orders;

import bandwright.rules.table.Word;

/** How a selling site writes a date in digits only. */
public enum DateOrder implements Word {
    DMY("dmy"),
    MDY("mdy"),
    YMD("ymd");

    private final String word;

    DateOrder(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
