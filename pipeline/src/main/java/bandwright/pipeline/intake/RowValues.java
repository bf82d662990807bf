package bandwright.pipeline.intake;

import bandwright.pipeline.intake.listing.Asked;
import bandwright.pipeline.rows.Cell;
import bandwright.pipeline.rows.FailedFormula;
import bandwright.pipeline.rows.Row;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Site;
import bandwright.rules.table.Names;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The cells of one row as values, in the way its site writes them. */
record RowValues(Row row, Site site, int maxQuantity) {
    /** Fields whose numbers are measures, not names: a long one there is nonsense, but nothing is lost. */
    private static final Set<OrderField> MEASURES =
            Set.of(OrderField.QUANTITY, OrderField.PRICE, OrderField.ORDER_DATE, OrderField.SHIP_BY);

    /** The trimmed text; empty where the site has a word for that ("N/A"). */
    String text(OrderField field) {
        return text(row, site, field);
    }

    static String text(Row row, Site site, OrderField field) {
        String text = row.cell(field).text().strip();
        boolean meansNothing = site.emptyWords().stream().anyMatch(word -> Names.same(word, text));
        return meansNothing ? "" : text;
    }

    String order() {
        String order = text(OrderField.ORDER);
        return FailedFormula.is(order) ? "" : order;
    }

    /** Without such a column every row is one piece; an empty cell under one says nothing. */
    OptionalInt quantity() {
        if (row.headerOf(OrderField.QUANTITY).isEmpty()) {
            return OptionalInt.of(1);
        }
        return Quantity.parse(text(OrderField.QUANTITY), site.decimal(), maxQuantity);
    }

    DateReading date(OrderField field) {
        Cell cell = row.cell(field);
        return cell.date().map(DateReading::of).orElseGet(() -> DateReading.parse(text(field), site.dateOrder()));
    }

    Optional<IntakeReason> findFault() {
        return Stream.<Supplier<Optional<IntakeReason>>>of(
                        this::damagedNumber,
                        this::missingOrder,
                        this::unclearQuantity,
                        () -> unclearDate(OrderField.ORDER_DATE),
                        () -> unclearDate(OrderField.SHIP_BY))
                .map(Supplier::get)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<IntakeReason> damagedNumber() {
        return row.header().fields().stream()
                .filter(field -> !MEASURES.contains(field) && row.cell(field).isDamagedNumber())
                .findFirst()
                .map(field -> new IntakeReason.NumberDamaged(field, text(field)));
    }

    private Optional<IntakeReason> missingOrder() {
        return order().isEmpty()
                ? Optional.of(new IntakeReason.OrderMissing(text(OrderField.ORDER)))
                : Optional.empty();
    }

    private Optional<IntakeReason> unclearQuantity() {
        return quantity().isEmpty()
                ? Optional.of(new IntakeReason.QuantityUnclear(text(OrderField.QUANTITY), maxQuantity))
                : Optional.empty();
    }

    private Optional<IntakeReason> unclearDate(OrderField field) {
        DateReading date = date(field);
        return date.isUnclear()
                ? Optional.of(new IntakeReason.DateUnclear(field, text(field), date.readings()))
                : Optional.empty();
    }

    /** What the buyer approved; empty where the site's orders wait for nobody. */
    Optional<String> approved() {
        return site.approval() ? Optional.of(text(OrderField.APPROVED)) : Optional.empty();
    }

    Asked asked(String siteName) {
        return new Asked(
                siteName,
                text(OrderField.PRODUCT),
                text(OrderField.VARIATION),
                text(OrderField.SKU),
                text(OrderField.DESIGN));
    }

    Wording wording() {
        SortedMap<String, String> columns = new TreeMap<>();
        for (OrderField field : row.header().fields()) {
            if (field.isText() && !text(field).isEmpty()) {
                columns.put(field.textField(), text(field));
            }
        }
        return new Wording(text(OrderField.PERSONALISATION), columns, site.textSeparator(), site.emptyWords());
    }
}
