package bandwright.rules.stock;

import bandwright.rules.table.Word;

/** What a shortage does to a row. */
public enum StockRule implements Word {
    NOTE("note"),
    HOLD("hold"),
    IGNORE("ignore");

    private final String word;

    StockRule(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
