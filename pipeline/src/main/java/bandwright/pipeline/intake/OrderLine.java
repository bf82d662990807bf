package bandwright.pipeline.intake;

import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.rows.Row;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A row that orders something, understood: two copies of a set of a tern mug and two lamp mugs are six pieces.
 *
 * @param line the line's own number, or its place among the order's rows in its file
 * @param quantity how many copies of its items
 * @param items what one copy consists of; at least one of them is drinkware
 * @param wording what is to be written on them, not read yet
 * @param heatSource the wish; empty = none
 * @param approved what its approved cell holds, where its site waits for that; empty where nobody is asked
 */
public record OrderLine(
        Row row,
        String site,
        String order,
        String line,
        Optional<LocalDate> orderDate,
        Optional<LocalDate> shipBy,
        int quantity,
        List<Item> items,
        Wording wording,
        String heatSource,
        boolean gift,
        Optional<String> approved) {
    public OrderLine {
        items = List.copyOf(items);
    }

    /** Things in one copy, those that are no drinkware too: pieces are counted over the whole set. */
    public int copySize() {
        return items.stream().mapToInt(Item::count).sum();
    }

    /** Pieces to make. */
    public int pieces() {
        return quantity
                * items.stream().filter(Item::isDrinkware).mapToInt(Item::count).sum();
    }

    /** Pieces that the row orders, those that are no drinkware too. */
    public int ordered() {
        return quantity * copySize();
    }

    /** The same with another number of its line. */
    public OrderLine numbered(String number) {
        return new OrderLine(
                row, site, order, number, orderDate, shipBy, quantity, items, wording, heatSource, gift, approved);
    }
}
