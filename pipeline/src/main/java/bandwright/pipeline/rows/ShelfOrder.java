package bandwright.pipeline.rows;

/** The order that a shop gives itself, to fill its shelf: it has no buyer, no box and nobody to ask. */
public final class ShelfOrder {
    private static final String NUMBER = "STOCK";

    private ShelfOrder() {}

    /** Whether an order's number says so. */
    public static boolean is(String order) {
        return order.equalsIgnoreCase(NUMBER);
    }
}
