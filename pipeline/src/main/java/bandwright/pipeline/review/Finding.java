package bandwright.pipeline.review;

/**
 * Something that a shop should know of its rulebook.
 *
 * @param line one sentence or two: what, and what to do
 * @param mustBeMended whether some row would be held for it; else it is only not confirmed
 */
public record Finding(String line, boolean mustBeMended) {}
