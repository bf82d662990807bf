package bandwright.pipeline.load;

import bandwright.rules.heat.HeatSource;
import java.util.Locale;
import java.util.Optional;

/**
 * The same day with something else at hand, worked out like the day itself.
 *
 * @param source of which there is one machine more; empty in other cases
 * @param endSeconds when the last piece is out then
 */
public record WhatIf(Case what, Optional<HeatSource> source, int endSeconds) {
    /** What is different. */
    public enum Case {
        MACHINE,
        PERSON,
        CONFIRMED;

        /** As it stands in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
