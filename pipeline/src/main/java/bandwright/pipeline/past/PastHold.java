package bandwright.pipeline.past;

/**
 * A row that an earlier run held.
 *
 * @param from where it stood: file | sheet | row
 * @param content a digest of its cells, by which the same row is known in a later file
 * @param made how many pieces of the row were made when it was held
 */
public record PastHold(OrderKey order, String line, String from, String content, String code, int made) {}
