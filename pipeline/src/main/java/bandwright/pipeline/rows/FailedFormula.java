package bandwright.pipeline.rows;

import java.util.Set;

/** What a spreadsheet shows where a formula failed (ECMA-376 Part 1, 18.17.3): nobody's order number, and no name. */
public final class FailedFormula {
    private static final Set<String> WORDS = Set.of("#N/A", "#REF!", "#VALUE!", "#NAME?", "#DIV/0!", "#NUM!", "#NULL!");

    private FailedFormula() {}

    public static boolean is(String text) {
        return WORDS.contains(text);
    }
}
