package bandwright.pipeline.past;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;

/** Where a run asks what was made before. */
@FunctionalInterface
public interface Memory {
    /** Of a shop that never made anything. */
    Memory NOTHING = (orders, countedOn, skus) -> Past.NONE;

    /**
     * What is remembered of these orders, and what was taken of blanks.
     *
     * @param countedOn for each sku the day from which on what is taken counts
     * @param skus the blanks of which it shall tell how they turned out
     */
    Past past(Collection<OrderKey> orders, Map<String, LocalDate> countedOn, Collection<String> skus);
}
