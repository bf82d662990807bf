package bandwright.rules.stock;

import java.util.Optional;

/**
 * What a run takes of one blank, against what was counted. 40 pieces and 3 spares of a blank of which 41 were counted:
 * all can be made, but 2 of the spares are missing.
 *
 * @param counted the last count; empty where the shop doesn't count this blank
 */
public record StockNeed(int pieces, int spares, Optional<StockCount> counted) {
    public StockNeed {
        if (pieces < 0 || spares < 0) {
            throw new IllegalArgumentException(pieces + " pieces, " + spares + " spares");
        }
    }

    /** How many to carry to the press. */
    public int take() {
        return pieces + spares;
    }

    /** How many pieces can't be made for want of blanks. */
    public int shortPieces() {
        return counted.map(stock -> Math.max(0, pieces - stock.count())).orElse(0);
    }

    /** How many of the spares are missing, beside the pieces. */
    public int shortSpares() {
        return counted.map(stock -> Math.max(0, take() - stock.count()) - shortPieces())
                .orElse(0);
    }

    /** What is left on the shelf if nothing is spoiled; none where it isn't counted or runs short. */
    public int left() {
        return counted.map(stock -> Math.max(0, stock.count() - pieces)).orElse(0);
    }

    /** Packs to order so that the shelf is above reorder_at again; 0 where it is, or where no such level is set. */
    public int packsToOrder() {
        if (counted.isEmpty() || counted.get().reorderAt().isEmpty()) {
            return 0;
        }
        int level = counted.get().reorderAt().getAsInt();
        if (left() > level) {
            return 0;
        }
        int missing = level + 1 - left() + shortPieces();
        int pack = Math.max(1, counted.get().packSize());
        return (missing + pack - 1) / pack;
    }
}
