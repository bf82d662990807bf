package bandwright.pipeline.owed;

import bandwright.pipeline.held.HeldFile;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.Orders;
import bandwright.pipeline.intake.RowSites;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.past.OrderKey;
import bandwright.pipeline.past.Past;
import bandwright.rules.Rulebook;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * What is to be made of all that is stated: needed is the most that any one file states of an order; what was printed
 * before is not printed again.
 */
public final class Owing {
    private final Map<OrderKey, OrderRows> orders = new LinkedHashMap<>();

    private Owing() {}

    /** The orders that an inbox speaks of, so that somebody can look up what was made of them. */
    public static Set<OrderKey> keys(Orders read, Rulebook rules) {
        RowSites rowSites = new RowSites(read.files(), rules.sites());
        Set<OrderKey> keys = new LinkedHashSet<>();
        read.lines().forEach(line -> keys.add(new OrderKey(line.site(), line.order())));
        read.held().forEach(held -> keys.add(new OrderKey(rowSites.of(held.row()), held.order())));
        read.skipped().forEach(skipped -> keys.add(new OrderKey(rowSites.of(skipped.row()), skipped.order())));
        return keys;
    }

    /** Every piece of every row ends in exactly one of the lists. */
    public static Owed each(Split<MatchedLine> matched, Orders read, Rulebook rules, Past past) {
        Owing owing = new Owing();
        RowSites rowSites = new RowSites(read.files(), rules.sites());
        for (MatchedLine line : matched.made()) {
            OrderRows rows =
                    owing.at(new OrderKey(line.line().site(), line.line().order()));
            boolean isAdded = HeldFile.findOrigin(line.line().row()).isPresent();
            (isAdded ? rows.added : rows.stated).add(line);
        }
        for (HeldRow held : read.held()) {
            owing.at(new OrderKey(rowSites.of(held.row()), held.order())).held.add(held);
        }
        for (HeldRow held : matched.held()) {
            owing.at(new OrderKey(rowSites.of(held.row()), held.order())).held.add(held);
        }
        Decisions decisions = new Decisions(matched.made());
        for (SkippedRow skipped : read.skipped()) {
            if (skipped.code().equals(SkippedRow.CANCELLED)) {
                owing.at(new OrderKey(rowSites.of(skipped.row()), skipped.order()))
                        .skipped
                        .add(skipped);
            } else {
                decisions.keep(skipped); // what is no drinkware was never printed
            }
        }
        owing.orders.forEach((key, rows) -> new OrderOwed(key, rows, past, decisions).decide());
        return decisions.owed();
    }

    private OrderRows at(OrderKey key) {
        return orders.computeIfAbsent(key, any -> new OrderRows());
    }
}
