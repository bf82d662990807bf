package bandwright.pipeline.write.proofs;

import bandwright.pipeline.size.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Pieces of an order that look alike.
 *
 * @param unit the first of them
 * @param count how many there are
 * @param code of the proof that is to be approved; empty where nobody is asked
 */
record ProofPiece(Unit unit, int count, Optional<String> code) {
    private record Look(Object blank, Object transfer, Optional<String> code) {}

    /** @param codes of the rows that wait or were approved, by unit id */
    static List<ProofPiece> of(List<Unit> units, Map<String, String> codes) {
        Map<Look, ProofPiece> pieces = new LinkedHashMap<>();
        for (Unit unit : units) {
            Optional<String> code = Optional.ofNullable(codes.get(unit.id()));
            Look look = new Look(unit.matched().blank(), unit.transfer(), code);
            pieces.merge(
                    look,
                    new ProofPiece(unit, 1, code),
                    (known, more) -> new ProofPiece(known.unit, known.count + 1, code));
        }
        return new ArrayList<>(pieces.values());
    }
}
