package bandwright.pipeline.owed;

import bandwright.pipeline.past.Signature;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A piece that is to be made.
 *
 * @param piece its number in the row's whole set, from 1
 * @param texts by field of its design, as ordered
 * @param content a digest of the row that ordered it, as it first was read
 * @param remakeOf the spoiled unit in whose place it is made
 */
public record OwedPiece(
        int piece, SortedMap<String, String> texts, Signature signature, String content, Optional<String> remakeOf) {}
