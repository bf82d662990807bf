package bandwright.pipeline.size;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.RowSites;
import bandwright.pipeline.rows.From;
import bandwright.rules.orders.IncompleteOrder;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Whether the sound rows of an order wait for its held ones: of an order of a mug and a cup the mug waits while the cup
 * is held, if the shop says {@code incomplete_order} wait. What is made for the shelf never waits.
 */
public final class WholeOrders {
    private static final String STOCK = "STOCK";

    private final RowSites sites;
    private final Map<Key, List<String>> held = new LinkedHashMap<>();

    /** The same number at two sites is two orders. */
    private record Key(String site, String order) {}

    private WholeOrders(RowSites sites) {
        this.sites = sites;
    }

    /**
     * The units that may be made now; with what waited before, and what waits for it.
     *
     * @param before rows that earlier stages held
     */
    public static Split<Unit> of(Split<Unit> sized, List<HeldRow> before, RowSites sites, IncompleteOrder rule) {
        if (rule == IncompleteOrder.MAKE) {
            return sized;
        }
        WholeOrders orders = new WholeOrders(sites);
        before.forEach(orders::note);
        sized.held().forEach(orders::note);
        return orders.split(sized);
    }

    private void note(HeldRow row) {
        boolean isOrder = !row.order().isEmpty() && !row.order().equalsIgnoreCase(STOCK);
        if (isOrder) {
            held.computeIfAbsent(new Key(sites.of(row.row()), row.order()), any -> new ArrayList<>())
                    .add(place(row));
        }
    }

    private static String place(HeldRow row) {
        From from = row.row().from();
        String file = from.file() + from.sheet().map(sheet -> ", " + sheet).orElse("");
        return Words.say("size.held-row", file, from.row(), row.reason().code());
    }

    private Split<Unit> split(Split<Unit> sized) {
        List<Unit> made = new ArrayList<>();
        Map<From, HeldRow> waiting = new LinkedHashMap<>();
        for (Unit unit : sized.made()) {
            OrderLine line = unit.matched().line();
            List<String> rows = held.getOrDefault(new Key(line.site(), line.order()), List.of());
            if (rows.isEmpty()) {
                made.add(unit);
            } else {
                HeldRow one = new HeldRow(line.row(), line.order(), 1, new SizeReason.OrderIncomplete(rows));
                waiting.merge(line.row().from(), one, WholeOrders::sum);
            }
        }
        List<HeldRow> all = new ArrayList<>(sized.held());
        all.addAll(waiting.values());
        return new Split<>(made, all);
    }

    private static HeldRow sum(HeldRow one, HeldRow other) {
        return new HeldRow(one.row(), one.order(), one.pieces() + other.pieces(), one.reason());
    }
}
