package bandwright.pipeline.past;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the ledger remembers of the orders and blanks of one run, read once.
 *
 * @param pieces of each of the orders, spoiled ones too, in the order in which they were made
 * @param holds of each of the orders, the newest last
 * @param ids every unit id that a unit of these orders could clash with
 * @param taken how many of a blank were taken since it was counted, by sku
 * @param experience how the blanks of the rulebook turned out
 */
public record Past(
        Map<OrderKey, List<PastPiece>> pieces,
        Map<OrderKey, List<PastHold>> holds,
        Set<String> ids,
        Map<String, Integer> taken,
        Experience experience) {
    /** Nothing was ever made. */
    public static final Past NONE = new Past(Map.of(), Map.of(), Set.of(), Map.of(), Experience.NONE);

    public Past {
        pieces = Map.copyOf(pieces);
        holds = Map.copyOf(holds);
        ids = Set.copyOf(ids);
        taken = Map.copyOf(taken);
    }

    /** The good pieces of an order. */
    public List<PastPiece> listGood(OrderKey order) {
        return pieces.getOrDefault(order, List.of()).stream()
                .filter(PastPiece::isGood)
                .toList();
    }

    /** The spoiled pieces of an order. */
    public List<PastPiece> listSpoiled(OrderKey order) {
        return pieces.getOrDefault(order, List.of()).stream()
                .filter(piece -> !piece.isGood())
                .toList();
    }

    /** The newest hold of a row that stood there. */
    public Optional<PastHold> findHold(OrderKey order, String from) {
        return holds.getOrDefault(order, List.of()).stream()
                .filter(hold -> hold.from().equals(from))
                .reduce((older, newer) -> newer);
    }

    /** Whether the same row was held before for the same reason. */
    public boolean wasHeld(OrderKey order, String content, String code) {
        return holds.getOrDefault(order, List.of()).stream()
                .anyMatch(hold -> hold.content().equals(content) && hold.code().equals(code));
    }

    public int takenOf(String sku) {
        return taken.getOrDefault(sku, 0);
    }
}
