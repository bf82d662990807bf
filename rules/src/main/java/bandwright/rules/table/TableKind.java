package bandwright.rules.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The tables of the rulebook and their columns: the contract that people's files are read by. */
public enum TableKind {
    SHOP(true, "key", "value", "note"),
    BLANKS(
            false,
            "sku",
            "aliases",
            "name",
            "material",
            "shape",
            "circumference",
            "top_diameter",
            "bottom_diameter",
            "height",
            "width",
            "outline",
            "top_margin",
            "bottom_margin",
            "side_margin",
            "handle_width",
            "wrap_overlap",
            "bleed_top",
            "bleed_bottom",
            "base_colour",
            "hot_colour",
            "handle_colour",
            "inside_colour",
            "finish",
            "backing",
            "parts",
            "heat_sources",
            "oven_places",
            "shelf",
            "cost",
            "care",
            "evidence",
            "note"),
    HEAT_SOURCES(
            false,
            "id",
            "name",
            "kind",
            "machines",
            "handle_clearance",
            "min_diameter",
            "max_diameter",
            "max_taper",
            "max_band_height",
            "max_band_width",
            "pieces_per_load",
            "positions",
            "turn",
            "covering",
            "watts",
            "circuit",
            "warm_up",
            "heating_rate",
            "cooling_rate",
            "loading",
            "unloading",
            "note"),
    PRESS_SETTINGS(
            false,
            "material",
            "heat_kind",
            "sku",
            "temperature",
            "time",
            "least_temperature",
            "most_temperature",
            "least_time",
            "most_time",
            "pressure",
            "allowed",
            "gloves",
            "peel",
            "rest",
            "cautions",
            "evidence",
            "note"),
    PAPERS(
            false,
            "id",
            "name",
            "width",
            "height",
            "margin_top",
            "margin_right",
            "margin_bottom",
            "margin_left",
            "max_length",
            "cost",
            "note"),
    PRINTERS(
            false,
            "id",
            "papers",
            "queue",
            "mirror",
            "colour",
            "icc_profile",
            "intent",
            "ink_cost",
            "scale_x",
            "scale_y",
            "note"),
    DESIGNS(false, "design", "artwork", "artwork_2", "placement", "fit", "crop_centre", "background", "note"),
    TEXTS(
            true,
            "design",
            "field",
            "side",
            "anchor",
            "x",
            "y",
            "width",
            "height",
            "lines",
            "font",
            "max_size",
            "min_size",
            "colour",
            "align",
            "letter_case",
            "language",
            "max_chars",
            "required",
            "default",
            "note"),
    FONTS(true, "id", "file", "note"),
    PRODUCTS(true, "site", "product", "variation", "blank", "design", "count", "texts", "note"),
    SITES(
            true,
            "site",
            "files",
            "header_row",
            "date_order",
            "decimal",
            "continued",
            "skip_status",
            "text_separator",
            "empty_words",
            "approval",
            "note"),
    ORDER_COLUMNS(false, "site", "field", "header", "note"),
    STOCK(true, "sku", "counted_on", "count", "reorder_at", "pack_size", "note"),
    CIRCUITS(true, "id", "volts", "amperes", "note"),
    CAUTIONS(false, "code", "applies_to", "step", "text", "evidence", "note");

    private final boolean mayBeEmpty;

    @SuppressWarnings("ImmutableEnumChecker") // List.of can not be changed
    private final List<String> columns;

    TableKind(boolean mayBeEmpty, String... columns) {
        this.mayBeEmpty = mayBeEmpty;
        this.columns = List.of(columns);
    }

    /** The table's file: blanks.csv. */
    public String file() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-') + ".csv";
    }

    public List<String> columns() {
        return columns;
    }

    /** Whether a shop can do without any row here. */
    public boolean mayBeEmpty() {
        return mayBeEmpty;
    }

    public static Optional<TableKind> find(String file) {
        return Arrays.stream(values())
                .filter(kind -> Names.same(kind.file(), file))
                .findFirst();
    }

    public static List<String> files() {
        return Arrays.stream(values()).map(TableKind::file).toList();
    }
}
