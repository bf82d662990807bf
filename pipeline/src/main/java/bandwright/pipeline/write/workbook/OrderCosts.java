package bandwright.pipeline.write.workbook;

import bandwright.pipeline.past.OrderKey;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.workbook.UnitCosts.Parts;
import bandwright.rules.words.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** The worksheet of orders.xlsx that says what each order costs: the pieces of this run, not what is held. */
final class OrderCosts {
    private static final int PIECES = 2;
    private static final int BLANKS = 3;
    private static final int INK = 5;
    private static final int COST = 7;
    private static final int UNKNOWN = 8;
    private static final String BETWEEN = "; ";
    private static final String MONEY = "0.00";

    private final TextSheet sheet;
    private final UnitCosts costs;
    private final List<List<BigDecimal>> written = new ArrayList<>();
    private final TreeSet<String> allUncounted = new TreeSet<>();
    private boolean hasInk;

    private OrderCosts(TextSheet sheet, UnitCosts costs) {
        this.sheet = sheet;
        this.costs = costs;
    }

    static List<String> header() {
        return List.of(
                Words.say("orders-workbook.order"),
                Words.say("orders-workbook.site"),
                Words.say("orders-workbook.pieces"),
                Words.say("orders-workbook.blanks"),
                Words.say("orders-workbook.paper"),
                Words.say("orders-workbook.ink-cost"),
                Words.say("orders-workbook.spoilage"),
                Words.say("orders-workbook.order-cost"),
                Words.say("orders-workbook.unknown"));
    }

    static void write(TextSheet sheet, List<Unit> units, UnitCosts costs) {
        Map<OrderKey, List<Unit>> orders = new LinkedHashMap<>();
        for (Unit unit : units) {
            OrderKey order = new OrderKey(
                    unit.matched().line().site(), unit.matched().line().order());
            orders.computeIfAbsent(order, key -> new ArrayList<>()).add(unit);
        }
        OrderCosts rows = new OrderCosts(sheet, costs);
        orders.forEach(rows::order);
        if (orders.size() > 1) {
            rows.all(orders.size(), units.size());
        }
        sheet.finish();
    }

    private void order(OrderKey order, List<Unit> units) {
        TreeSet<String> unknown = new TreeSet<>();
        TreeSet<String> uncounted = new TreeSet<>();
        for (Unit unit : units) {
            unknown.addAll(costs.unknown(unit));
            if (costs.inkCost(unit).isEmpty()) {
                uncounted.add(Words.say(
                        "orders-workbook.no-ink-cost",
                        costs.room(unit).printer().id()));
            }
        }
        allUncounted.addAll(uncounted);
        boolean isKnown = unknown.isEmpty();
        int row = next(order.order(), order.site(), String.join(BETWEEN, isKnown ? uncounted : unknown));
        sheet.number(row, PIECES, units.size(), "0");
        if (isKnown) {
            List<Parts> parts =
                    units.stream().flatMap(unit -> costs.parts(unit).stream()).toList();
            List<BigDecimal> cents = Cents.of(List.of(
                    sum(parts, Parts::blank),
                    sum(parts, Parts::paper),
                    sum(parts, Parts::ink),
                    sum(parts, Parts::spoilage)));
            boolean isInked =
                    units.stream().anyMatch(unit -> costs.inkCost(unit).isPresent());
            hasInk |= isInked;
            money(row, cents, isInked);
            written.add(cents);
        }
    }

    /** What all orders cost together, where that is known: the sum of the cents above it. */
    private void all(int orders, int pieces) {
        boolean isKnown = written.size() == orders;
        int row = next(
                Words.say("orders-workbook.all-orders"),
                "",
                isKnown ? String.join(BETWEEN, allUncounted) : Words.say("orders-workbook.not-all"));
        sheet.number(row, PIECES, pieces, "0");
        if (isKnown) {
            List<BigDecimal> sums = new ArrayList<>();
            for (int part = 0; part < written.get(0).size(); part++) {
                int column = part;
                sums.add(Cents.sum(
                        written.stream().map(cents -> cents.get(column)).toList()));
            }
            money(row, sums, hasInk);
        }
    }

    private int next(String order, String site, String unknown) {
        List<String> texts = new ArrayList<>(header().stream().map(head -> "").toList());
        texts.set(0, order);
        texts.set(1, site);
        texts.set(UNKNOWN, unknown);
        return sheet.next(texts);
    }

    private void money(int row, List<BigDecimal> cents, boolean isInked) {
        for (int part = 0; part < cents.size(); part++) {
            if (isInked || BLANKS + part != INK) {
                sheet.number(row, BLANKS + part, cents.get(part), MONEY);
            }
        }
        sheet.number(row, COST, Cents.sum(cents), MONEY);
    }

    private static double sum(List<Parts> parts, ToDoubleFunction<Parts> part) {
        return parts.stream().mapToDouble(part).sum();
    }
}
