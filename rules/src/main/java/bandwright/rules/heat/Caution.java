package bandwright.rules.heat;

import bandwright.rules.table.Evidence;
import java.util.List;

/**
 * One caution of cautions.csv.
 *
 * @param appliesTo all of these must hold; empty = always
 */
public record Caution(String code, List<Condition> appliesTo, CautionStep step, String text, Evidence evidence) {
    public Caution {
        appliesTo = List.copyOf(appliesTo);
    }

    /** One test of a piece: material:glass, kind:oven, finish:glitter, part:lid. */
    public record Condition(Subject subject, String value) {}

    /** What a condition looks at. */
    public enum Subject {
        MATERIAL,
        KIND,
        FINISH,
        PART
    }
}
