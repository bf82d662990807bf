package bandwright.pipeline.intake;

import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
import bandwright.rules.blanks.Blanks;
import bandwright.rules.designs.Designs;
import bandwright.rules.designs.Texts;
import bandwright.rules.heat.Cautions;
import bandwright.rules.heat.HeatSources;
import bandwright.rules.heat.PressSettings;
import bandwright.rules.orders.DateOrder;
import bandwright.rules.orders.IncompleteOrder;
import bandwright.rules.orders.OrderColumn;
import bandwright.rules.orders.OrderColumns;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Proofs;
import bandwright.rules.orders.Site;
import bandwright.rules.orders.Sites;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.Papers;
import bandwright.rules.paper.Printers;
import bandwright.rules.stock.Stock;
import bandwright.rules.stock.StockRule;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.TemperatureUnit;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Rulebooks that have only what intake asks for. */
final class TestRules {
    static final Site PLAIN = site("", "", "", '.');

    private TestRules() {}

    static Rulebook plain() {
        return with(PLAIN);
    }

    static Rulebook with(Site... sites) {
        return new Rulebook(
                shop(),
                new Blanks(List.of()),
                new HeatSources(List.of()),
                new PressSettings(List.of()),
                new Papers(List.of()),
                new Printers(List.of()),
                new Designs(List.of()),
                new Texts(List.of()),
                List.of(),
                List.of(),
                new Sites(Arrays.asList(sites)),
                columns(),
                new Stock(List.of()),
                List.of(),
                new Cautions(List.of()));
    }

    static Site site(String name, String files, String dateOrder, char decimal) {
        return site(name, files, dateOrder, decimal, OptionalInt.empty(), List.of("-"), false);
    }

    static Site site(
            String name,
            String files,
            String dateOrder,
            char decimal,
            OptionalInt headerRow,
            List<String> emptyWords,
            boolean approval) {
        Optional<DateOrder> order = Arrays.stream(DateOrder.values())
                .filter(each -> each.word().equals(dateOrder))
                .findFirst();
        List<String> skip = name.isEmpty() ? List.of("Cancelled", "Refunded") : List.of();
        return new Site(name, files, headerRow, order, decimal, false, skip, "", emptyWords, approval, "");
    }

    private static OrderColumns columns() {
        List<OrderColumn> columns = new ArrayList<>();
        add(columns, "", OrderField.ORDER, "Order", "Order Number", "Order ID", "Order #");
        add(columns, "", OrderField.LINE, "Line");
        add(columns, "", OrderField.SITE, "Site");
        add(columns, "", OrderField.ORDER_DATE, "Order Date", "Date");
        add(columns, "", OrderField.SHIP_BY, "Ship By");
        add(columns, "", OrderField.STATUS, "Status");
        add(columns, "", OrderField.PRODUCT, "Product", "Title");
        add(columns, "", OrderField.SKU, "SKU", "Blank");
        add(columns, "", OrderField.DESIGN, "Design", "Artwork");
        add(columns, "", OrderField.QUANTITY, "Quantity", "Qty");
        add(columns, "", OrderField.PERSONALISATION, "Personalisation");
        add(columns, "", OrderField.HEAT_SOURCE, "Heat Source");
        add(columns, "", OrderField.BUYER, "Buyer");
        add(columns, "", OrderField.GIFT, "Gift");
        add(columns, "", OrderField.APPROVED, "Approved");
        add(columns, "Harbour Fair", OrderField.ORDER, "Ticket");
        add(columns, "Harbour Fair", OrderField.SKU, "Ware");
        return new OrderColumns(columns);
    }

    private static void add(List<OrderColumn> columns, String site, OrderField field, String... headers) {
        for (String header : headers) {
            columns.add(new OrderColumn(site, field, header));
        }
    }

    private static Shop shop() {
        return new Shop(
                "Quillmoor Lighthouse Trust",
                LengthUnit.IN,
                TemperatureUnit.F,
                Optional.empty(),
                List.of(),
                "",
                1,
                LocalTime.of(9, 0),
                List.of(),
                Optional.empty(),
                false,
                200,
                100,
                360,
                0.03,
                0.1,
                0.15,
                0.35,
                3,
                2,
                5,
                Length.mm(2),
                Length.mm(4),
                Length.mm(14),
                Length.mm(30),
                Cutting.SCISSORS,
                StockRule.NOTE,
                IncompleteOrder.MAKE,
                true,
                0.03,
                500,
                90,
                Proofs.COLOURED);
    }
}
