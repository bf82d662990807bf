package bandwright.pipeline.match;

import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.listing.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/**
 * Which numbers the pieces of each item have. They are counted copy by copy, so that the first copy keeps its numbers
 * however many are ordered: of two copies of a tern and two lamps the terns are 1 and 4, the lamps 2, 3, 5 and 6.
 */
final class ItemPieces {
    private ItemPieces() {}

    /**
     * The pieces of each item that is drinkware.
     *
     * @param texts of each thing that the line orders, copy by copy
     */
    static List<List<Piece>> of(OrderLine line, List<SortedMap<String, String>> texts) {
        List<List<Piece>> pieces = new ArrayList<>();
        int place = 0;
        for (Item item : line.items()) {
            if (item.isDrinkware()) {
                pieces.add(pieces(line, texts, place, item.count()));
            }
            place += item.count();
        }
        return pieces;
    }

    private static List<Piece> pieces(OrderLine line, List<SortedMap<String, String>> texts, int place, int count) {
        List<Piece> pieces = new ArrayList<>();
        for (int copy = 0; copy < line.quantity(); copy++) {
            for (int nth = 0; nth < count; nth++) {
                int index = copy * line.copySize() + place + nth;
                pieces.add(new Piece(index + 1, texts.get(index)));
            }
        }
        return pieces;
    }
}
