package bandwright.pipeline.past;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A piece whose transfer was printed.
 *
 * @param id the unit's
 * @param run 2026-03-02-1
 * @param what its blank, design and texts, for a person; the texts go when the buyer's data do
 * @param sheet letter-01.pdf, page 3
 * @param content a digest of the row that ordered it, as it first was read
 * @param source the id of its heat source; empty in a ledger from before it was kept
 * @param heating how it is pressed; empty there, too
 * @param remakeOf the spoiled unit in whose place it was made
 */
public record PastPiece(
        String id,
        String run,
        OrderKey order,
        String line,
        int piece,
        Signature signature,
        String blank,
        String what,
        String sheet,
        int load,
        String content,
        String source,
        Optional<Heating> heating,
        Optional<String> remakeOf,
        Optional<Spoiled> spoiled) {
    /** When and why a piece was ruined. */
    public record Spoiled(LocalDate day, String reason) {}

    public boolean isGood() {
        return spoiled.isEmpty();
    }
}
