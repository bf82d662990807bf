package bandwright.pipeline.allot;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.past.Past;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.size.Note;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.size.Urgency;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.stock.StockCount;
import bandwright.rules.stock.StockRule;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Gives the blanks on the shelf to the most urgent pieces. Five tumblers are asked for and three are there: the two that
 * ship last are noted, or held where the shop says so. Blanks that nobody counts are always there.
 */
public final class Allotting {
    private final Rulebook rules;
    private final Past past;
    /** What is left of each counted blank, by sku. */
    private final Map<String, Integer> left = new HashMap<>();

    /** One copy of what a row orders; a set waits whole, or dropping its held row again would make a part of it twice. */
    private record Copy(From row, int number) {
        static Copy of(Unit unit) {
            OrderLine line = unit.matched().line();
            return new Copy(line.row().from(), (unit.piece() - 1) / line.copySize());
        }
    }

    private Allotting(Rulebook rules, Past past) {
        this.rules = rules;
        this.past = past;
    }

    /** Every unit, in its order, goes on, perhaps with a note, or is held; what was held before stays so. */
    public static Split<Unit> each(Split<Unit> sized, Rulebook rules, Past past) {
        StockRule rule = rules.shop().stock();
        if (rule == StockRule.IGNORE) {
            return sized;
        }
        List<Unit> units = sized.made();
        Allotting allotting = new Allotting(rules, past);
        Map<String, Unit> wanting = new HashMap<>();
        Map<Copy, Blank> waiting = new HashMap<>();
        units.stream()
                .sorted(Urgency.OF_UNIT)
                .filter(unit -> !allotting.takes(unit.matched().blank()))
                .forEach(unit -> {
                    wanting.put(unit.id(), unit);
                    waiting.putIfAbsent(Copy.of(unit), unit.matched().blank());
                });
        List<Unit> made = new ArrayList<>();
        Map<From, HeldRow> held = new LinkedHashMap<>();
        for (Unit unit : units) {
            Blank missing = waiting.get(Copy.of(unit));
            if (rule == StockRule.HOLD && missing != null) {
                OrderLine line = unit.matched().line();
                HeldRow one = new HeldRow(line.row(), line.order(), 1, allotting.reason(missing));
                held.merge(line.row().from(), one, HeldRow::and);
            } else if (!wanting.containsKey(unit.id())) {
                made.add(unit);
            } else {
                Blank blank = unit.matched().blank();
                made.add(unit.noted(
                        new Note("stock", Words.say("note.stock", blank.sku(), allotting.available(blank)))));
            }
        }
        List<HeldRow> all = new ArrayList<>(sized.held());
        all.addAll(held.values());
        return new Split<>(made, all);
    }

    private boolean takes(Blank blank) {
        Optional<StockCount> count = rules.stock().find(blank.sku());
        if (count.isEmpty()) {
            return true;
        }
        int rest = left.computeIfAbsent(blank.sku(), sku -> available(blank));
        left.put(blank.sku(), Math.max(0, rest - 1));
        return rest > 0;
    }

    private int available(Blank blank) {
        return rules.stock()
                .find(blank.sku())
                .map(count -> count.less(past.takenOf(blank.sku())).count())
                .orElse(0);
    }

    private AllotReason reason(Blank blank) {
        return new AllotReason.OutOfStock(blank.sku(), available(blank));
    }
}
