package bandwright.pipeline.size;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.Orders;
import bandwright.pipeline.intake.RowSites;
import bandwright.pipeline.past.OrderKey;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.ShelfOrder;
import bandwright.rules.Rulebook;
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
    private final RowSites sites;
    private final Map<OrderKey, List<String>> held = new LinkedHashMap<>();

    private WholeOrders(RowSites sites) {
        this.sites = sites;
    }

    /**
     * The units that may be made now; with what waited before, and what waits for it.
     *
     * @param before rows that earlier stages held
     */
    public static Split<Unit> of(Split<Unit> sized, List<HeldRow> before, Orders read, Rulebook rules) {
        if (rules.shop().incompleteOrder() == IncompleteOrder.MAKE) {
            return sized;
        }
        WholeOrders orders = new WholeOrders(new RowSites(read.files(), rules.sites()));
        before.forEach(orders::note);
        sized.held().forEach(orders::note);
        return orders.split(sized);
    }

    private void note(HeldRow row) {
        boolean isOrder = !row.order().isEmpty() && !ShelfOrder.is(row.order());
        if (isOrder) {
            held.computeIfAbsent(new OrderKey(sites.of(row.row()), row.order()), any -> new ArrayList<>())
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
            List<String> rows = held.getOrDefault(new OrderKey(line.site(), line.order()), List.of());
            if (rows.isEmpty()) {
                made.add(unit);
            } else {
                HeldRow one = new HeldRow(line.row(), line.order(), 1, new SizeReason.OrderIncomplete(rows));
                waiting.merge(line.row().from(), one, HeldRow::and);
            }
        }
        List<HeldRow> all = new ArrayList<>(sized.held());
        all.addAll(waiting.values());
        return new Split<>(made, all);
    }
}
