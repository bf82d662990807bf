package bandwright.pipeline.load;

import bandwright.pipeline.past.Past;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Shop;
import bandwright.rules.table.Names;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which pieces are pressed alone before the others of their blank: the first one, where that blank never came out of
 * this heat source, or where no listing and no trial of its own confirms the setting. A blank with a single piece has no
 * batch to go before.
 */
final class Firsts {
    private final Shop shop;
    private final Past past;

    Firsts(Shop shop, Past past) {
        this.shop = shop;
        this.past = past;
    }

    /**
     * The ids of those pieces.
     *
     * @param units the most urgent first
     */
    Set<String> of(List<Unit> units) {
        Map<List<Object>, Unit> first = new HashMap<>();
        Set<String> firsts = new HashSet<>();
        for (Unit unit : units) {
            Unit other = first.putIfAbsent(List.of(Likeness.of(unit), blank(unit)), unit);
            if (other != null && isToBeTried(other)) {
                firsts.add(other.id());
            }
        }
        return firsts;
    }

    static String blank(Unit unit) {
        return Names.fold(unit.matched().blank().sku());
    }

    private boolean isToBeTried(Unit unit) {
        return shop.firstAlone() && (!unit.matched().setting().isConfirmed() || isNew(unit));
    }

    /** Pieces of a ledger that didn't keep the heat source yet speak for every one. */
    private boolean isNew(Unit unit) {
        String sku = unit.matched().blank().sku();
        return past.experience().made(sku, unit.matched().source().id()).pieces() == 0
                && past.experience().made(sku, "").pieces() == 0;
    }
}
