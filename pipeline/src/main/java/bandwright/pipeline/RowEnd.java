package bandwright.pipeline;

import java.util.Locale;

/** How a row ends: in exactly one of these. */
public enum RowEnd {
    /** All of its pieces are on sheets. */
    MADE,
    /** Some pieces are on sheets, the rest is held or skipped. */
    PART,
    HELD,
    SKIPPED,
    EMPTY;

    /** The word that run.json and orders.xlsx have for it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
