package bandwright.pipeline.write.slips;

import bandwright.pipeline.RowFate;
import bandwright.pipeline.RowFates;
import bandwright.pipeline.Run;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.RowSites;
import bandwright.pipeline.rows.Row;
import bandwright.pipeline.rows.ShelfOrder;
import bandwright.pipeline.size.Unit;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Sites;
import bandwright.rules.orders.YesWords;
import bandwright.rules.table.Names;
import bandwright.rules.table.NaturalOrder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One order as its box needs it.
 *
 * @param emptyWords by which its site says that a cell says nothing
 * @param rows what became of each of its rows, in the order of the files
 */
record Slip(String site, String order, List<String> emptyWords, List<RowFate> rows) {
    private static final Set<OrderField> ADDRESS = Set.of(
            OrderField.SHIP_TO,
            OrderField.STREET,
            OrderField.CITY,
            OrderField.REGION,
            OrderField.POSTCODE,
            OrderField.COUNTRY);
    /** These stand on one line of an address where their columns stand side by side. */
    private static final Set<OrderField> PLACE = Set.of(OrderField.CITY, OrderField.REGION, OrderField.POSTCODE);

    private static final Comparator<Slip> URGENT_FIRST = Comparator.comparing(
                    (Slip slip) -> slip.shipBy().orElse(LocalDate.MAX))
            .thenComparing(Slip::order, NaturalOrder.INSTANCE)
            .thenComparing(Slip::site);

    Slip {
        emptyWords = List.copyOf(emptyWords);
        rows = List.copyOf(rows);
    }

    /** The orders of which at least one piece is made, the most urgent first. */
    static List<Slip> of(Run run, Sites all) {
        RowSites sites = new RowSites(run.orders().files(), all);
        Map<List<String>, List<RowFate>> orders = new LinkedHashMap<>();
        for (RowFate fate : RowFates.of(run)) {
            if (!fate.order().isEmpty()) {
                orders.computeIfAbsent(List.of(siteOf(fate, sites), fate.order()), key -> new ArrayList<>())
                        .add(fate);
            }
        }
        return orders.entrySet().stream()
                .map(entry -> {
                    String site = entry.getKey().get(0);
                    return new Slip(site, entry.getKey().get(1), sites.emptyWords(site), entry.getValue());
                })
                .filter(slip -> !ShelfOrder.is(slip.order))
                .filter(slip -> slip.rows.stream().anyMatch(row -> !row.units().isEmpty()))
                .sorted(URGENT_FIRST)
                .toList();
    }

    private static String siteOf(RowFate fate, RowSites sites) {
        return fate.line().map(OrderLine::site).orElseGet(() -> sites.of(fate.row()));
    }

    /** The pieces of a row by what a packer can tell apart: a set has several kinds, and so have several names. */
    static Collection<List<Unit>> alike(List<Unit> units) {
        Map<List<Object>, List<Unit>> alike = new LinkedHashMap<>();
        for (Unit unit : units) {
            List<Object> kind = List.of(
                    unit.matched().blank().sku(), unit.matched().design().name(), unit.texts());
            alike.computeIfAbsent(kind, any -> new ArrayList<>()).add(unit);
        }
        return alike.values();
    }

    /** Whether another file of this inbox states the same row: then its pieces stand there. */
    boolean isSaidElsewhere(RowFate row) {
        return rows.stream()
                .filter(other ->
                        !other.row().from().file().equals(row.row().from().file()))
                .anyMatch(other -> !other.units().isEmpty() && isAlike(other.row(), row.row()));
    }

    private boolean isAlike(Row one, Row other) {
        return List.of(OrderField.SKU, OrderField.PRODUCT, OrderField.VARIATION, OrderField.DESIGN).stream()
                .allMatch(field -> Names.same(text(one, field), text(other, field)));
    }

    boolean isComplete() {
        return rows.stream().allMatch(row -> row.held().isEmpty());
    }

    boolean isGift() {
        return rows.stream()
                .anyMatch(fate -> YesWords.has(text(fate.row(), OrderField.GIFT))
                        || !text(fate.row(), OrderField.GIFT_MESSAGE).isEmpty());
    }

    Optional<LocalDate> shipBy() {
        return rows.stream()
                .flatMap(row -> row.line().flatMap(OrderLine::shipBy).stream())
                .min(Comparator.naturalOrder());
    }

    Optional<LocalDate> orderDate() {
        return rows.stream()
                .flatMap(row -> row.line().flatMap(OrderLine::orderDate).stream())
                .min(Comparator.naturalOrder());
    }

    /** The cell's words; none where they are the site's way to say nothing. */
    String text(Row row, OrderField field) {
        String text = row.cell(field).text().strip();
        return emptyWords.stream().anyMatch(word -> Names.same(word, text)) ? "" : text;
    }

    /** What the first row that says it says. */
    Optional<String> said(OrderField field) {
        return rows.stream()
                .map(fate -> text(fate.row(), field))
                .filter(text -> !text.isEmpty())
                .findFirst();
    }

    /** The address line by line, in the order in which the buyer's file has its columns. */
    List<String> address() {
        Row row = rows.stream()
                .map(RowFate::row)
                .filter(each ->
                        ADDRESS.stream().anyMatch(field -> !text(each, field).isEmpty()))
                .findFirst()
                .orElse(rows.get(0).row());
        List<String> lines = new ArrayList<>();
        boolean isPlace = false;
        for (OrderField field : row.header().fields()) {
            String text = text(row, field);
            if (!ADDRESS.contains(field) || text.isEmpty()) {
                continue;
            }
            if (isPlace && PLACE.contains(field)) {
                lines.set(lines.size() - 1, lines.get(lines.size() - 1) + " " + text);
            } else {
                lines.add(text);
            }
            isPlace = PLACE.contains(field);
        }
        return lines;
    }
}
