package bandwright.rules.table;

/** Where a figure of the rulebook is from. */
public enum Evidence implements Word {
    MEASURED("measured"),
    SUPPLIER_LISTING("supplier listing"),
    COMMON_PRACTICE("common practice"),
    FROM_MEMORY("from memory");

    private final String word;

    Evidence(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
