package bandwright.rules.orders;

import bandwright.rules.table.Word;

/** Whether the sound rows of an order wait for its held ones. */
public enum IncompleteOrder implements Word {
    MAKE("make"),
    WAIT("wait");

    private final String word;

    IncompleteOrder(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
