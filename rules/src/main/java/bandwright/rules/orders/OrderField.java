package bandwright.rules.orders;

import bandwright.rules.table.Names;
import java.util.List;
import java.util.Set;

/** What a column of an order file means: one of a closed list, or a text field of a design. */
public record OrderField(String name) {
    private static final String TEXT = "text:";
    private static final Set<String> CLOSED = Set.of(
            "site",
            "order",
            "line",
            "order_date",
            "ship_by",
            "status",
            "product",
            "variation",
            "sku",
            "design",
            "quantity",
            "personalisation",
            "heat_source",
            "buyer",
            "ship_to",
            "street",
            "city",
            "region",
            "postcode",
            "country",
            "shipping",
            "gift",
            "gift_message",
            "note",
            "price",
            "approved");

    public static final OrderField SITE = new OrderField("site");
    public static final OrderField ORDER = new OrderField("order");
    public static final OrderField LINE = new OrderField("line");
    public static final OrderField ORDER_DATE = new OrderField("order_date");
    public static final OrderField SHIP_BY = new OrderField("ship_by");
    public static final OrderField STATUS = new OrderField("status");
    public static final OrderField PRODUCT = new OrderField("product");
    public static final OrderField VARIATION = new OrderField("variation");
    public static final OrderField SKU = new OrderField("sku");
    public static final OrderField DESIGN = new OrderField("design");
    public static final OrderField QUANTITY = new OrderField("quantity");
    public static final OrderField PERSONALISATION = new OrderField("personalisation");
    public static final OrderField HEAT_SOURCE = new OrderField("heat_source");
    public static final OrderField BUYER = new OrderField("buyer");
    public static final OrderField SHIP_TO = new OrderField("ship_to");
    public static final OrderField STREET = new OrderField("street");
    public static final OrderField CITY = new OrderField("city");
    public static final OrderField REGION = new OrderField("region");
    public static final OrderField POSTCODE = new OrderField("postcode");
    public static final OrderField COUNTRY = new OrderField("country");
    public static final OrderField SHIPPING = new OrderField("shipping");
    public static final OrderField GIFT = new OrderField("gift");
    public static final OrderField GIFT_MESSAGE = new OrderField("gift_message");
    public static final OrderField NOTE = new OrderField("note");
    public static final OrderField PRICE = new OrderField("price");
    public static final OrderField APPROVED = new OrderField("approved");

    /** What a selling site says once an order, and not of each of its rows. */
    public static final Set<OrderField> OF_THE_ORDER = Set.of(
            SITE,
            ORDER,
            ORDER_DATE,
            SHIP_BY,
            STATUS,
            BUYER,
            SHIP_TO,
            STREET,
            CITY,
            REGION,
            POSTCODE,
            COUNTRY,
            SHIPPING,
            GIFT,
            GIFT_MESSAGE,
            NOTE);

    public OrderField {
        if (!isKnown(name)) {
            throw new IllegalArgumentException("no field " + name);
        }
    }

    public static OrderField text(String field) {
        return new OrderField(TEXT + field);
    }

    /** Whether a cell of order-columns.csv may say this. */
    public static boolean isKnown(String name) {
        return CLOSED.contains(name) || (name.startsWith(TEXT) && name.length() > TEXT.length());
    }

    public boolean isText() {
        return name.startsWith(TEXT);
    }

    /** The design's field that a text column fills: {@code name} of {@code text:name}. */
    public String textField() {
        return name.substring(TEXT.length());
    }

    /** The closed list, in the alphabet's order. */
    static List<String> names() {
        return CLOSED.stream().sorted().toList();
    }

    /** A name as the list spells it: Ship_By is ship_by; the field of a text keeps its own spelling. */
    static String spelled(String name) {
        String folded = Names.fold(name);
        if (!folded.startsWith(TEXT)) {
            return folded;
        }
        return TEXT + name.substring(name.indexOf(':') + 1).strip();
    }
}
