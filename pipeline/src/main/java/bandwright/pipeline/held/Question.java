package bandwright.pipeline.held;

/**
 * What only the buyer knows.
 *
 * @param words the buyer's own, as they came; empty where there are none
 * @param needed what is asked of the buyer, in a sentence of its own
 */
public record Question(String words, String needed) {}
