package bandwright.rules;

import bandwright.rules.orders.IncompleteOrder;
import bandwright.rules.orders.Proofs;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.Papers;
import bandwright.rules.paper.Printers;
import bandwright.rules.stock.StockRule;
import bandwright.rules.table.Cell;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Nearest;
import bandwright.rules.table.Place;
import bandwright.rules.table.Plausible;
import bandwright.rules.table.Quoted;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.table.TableKind;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.ShopUnits;
import bandwright.rules.units.TemperatureUnit;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads shop.csv: one key a row. A key that is missing or empty has its built-in value. */
final class ShopKeys {
    /** A shop switches a limit off by a share that nothing reaches. */
    private static final double NO_LIMIT = 1_000_000;

    private static final List<String> KEYS = List.of(
            "name",
            "unit",
            "temperature_unit",
            "time_zone",
            "paper",
            "printer",
            "people",
            "day_starts",
            "breaks",
            "collection",
            "first_alone",
            "ppi_note",
            "ppi_hold",
            "warp_ppi",
            "stretch_note",
            "stretch_hold",
            "crop_note",
            "crop_hold",
            "contrast_note",
            "contrast_hold",
            "colour_note",
            "trim_border",
            "trim_gap",
            "flag_depth",
            "flag_height",
            "cutting",
            "stock",
            "incomplete_order",
            "artwork_by_name",
            "spoil_rate",
            "max_quantity",
            "keep_buyer_days",
            "proofs");

    private final Map<String, Row.Written> rows = new HashMap<>();
    private final Faults faults;
    private final ShopUnits units;

    private ShopKeys(Table table, Faults faults) {
        this.faults = faults;
        for (Row.Written row : table.rows()) {
            rows.putIfAbsent(Names.fold(row.cell("key")), row);
        }
        this.units = units();
    }

    static ShopKeys read(Table table, Faults faults) {
        checkKeys(table, faults);
        return new ShopKeys(table, faults);
    }

    private static void checkKeys(Table table, Faults faults) {
        Map<String, Integer> first = new HashMap<>();
        for (Row.Written row : table.rows()) {
            Place place = new Place(TableKind.SHOP.file(), row.number(), "key");
            String key = Names.fold(row.cell("key"));
            Integer other = first.putIfAbsent(key, row.number());
            if (key.isEmpty()) {
                faults.add(place, "needed", "", "key");
            } else if (other != null) {
                faults.add(place, "twice", Quoted.text(key), row.number(), other);
            } else if (!KEYS.contains(key)) {
                unknown(row.cell("key"), place, faults);
            }
        }
    }

    private static void unknown(String key, Place place, Faults faults) {
        String listed = String.join(", ", KEYS);
        Nearest.of(key, KEYS)
                .ifPresentOrElse(
                        near -> faults.add(place, "word.near", Quoted.text(key), near, listed),
                        () -> faults.add(place, "word", Quoted.text(key), listed));
    }

    /** What a bare number means; asked before any other table is read. */
    ShopUnits shopUnits() {
        return units;
    }

    private ShopUnits units() {
        return new ShopUnits(
                cell("unit", ShopUnits.BUILT_IN)
                        .oneOf(List.of(LengthUnit.values()), LengthUnit::word)
                        .orElse(LengthUnit.IN),
                cell("temperature_unit", ShopUnits.BUILT_IN)
                        .oneOf(List.of(TemperatureUnit.values()), TemperatureUnit::name)
                        .orElse(TemperatureUnit.F));
    }

    Shop shop(Papers papers, Printers printers) {
        List<String> wanted = cell("paper").list();
        String printer = cell("printer").text();
        return new Shop(
                cell("name").text(),
                units.length(),
                units.temperature(),
                zone(cell("time_zone")),
                wanted.isEmpty()
                        ? papers.list().stream().limit(1).map(p -> p.id()).toList()
                        : wanted,
                printer.isEmpty()
                        ? printers.list().stream().map(p -> p.id()).findFirst().orElse("")
                        : printer,
                cell("people").integer(1, 1000).orElse(1),
                cell("day_starts").clock().orElse(LocalTime.of(9, 0)),
                cell("breaks").breaks(),
                cell("collection").clock(),
                cell("first_alone").isEmpty() || cell("first_alone").yes(),
                number("ppi_note", 200),
                number("ppi_hold", 100),
                cell("warp_ppi").number("", 50, 2400).orElse(300.0),
                share("stretch_note", NO_LIMIT, 0.03),
                share("stretch_hold", NO_LIMIT, 0.10),
                share("crop_note", NO_LIMIT, 0.15),
                share("crop_hold", NO_LIMIT, 0.35),
                number("contrast_note", 3.0),
                number("contrast_hold", 2.0),
                number("colour_note", 5),
                length("trim_border", Plausible.SMALL, 2),
                length("trim_gap", Plausible.SMALL, 4),
                length("flag_depth", Plausible.FLAG, 14),
                length("flag_height", Plausible.FLAG, 30),
                cell("cutting").word(Cutting.values()).orElse(Cutting.SCISSORS),
                cell("stock").word(StockRule.values()).orElse(StockRule.NOTE),
                cell("incomplete_order").word(IncompleteOrder.values()).orElse(IncompleteOrder.MAKE),
                cell("artwork_by_name").isEmpty() || cell("artwork_by_name").yes(),
                share("spoil_rate", 90, 0.03),
                cell("max_quantity").integer(1, 1_000_000).orElse(500),
                cell("keep_buyer_days").integer(0, 100_000).orElse(90),
                cell("proofs").word(Proofs.values()).orElse(Proofs.COLOURED));
    }

    private double number(String key, double builtIn) {
        return cell(key).number("", 0, 100_000).orElse(builtIn);
    }

    private double share(String key, double mostPercent, double builtIn) {
        return cell(key).share(mostPercent).orElse(builtIn);
    }

    private Length length(String key, Plausible plausible, double builtInMm) {
        return cell(key).length(plausible).orElse(Length.mm(builtInMm));
    }

    private Cell cell(String key) {
        return cell(key, units);
    }

    private Cell cell(String key, ShopUnits shopUnits) {
        if (!KEYS.contains(key)) {
            throw new IllegalArgumentException("no key " + key);
        }
        Row.Written row = rows.get(key);
        String text = row == null ? "" : row.cell("value");
        return new Cell(
                new Place(TableKind.SHOP.file(), row == null ? 0 : row.number(), "value"), text, shopUnits, faults);
    }

    /** A zone of the tz database, such as Europe/London; empty = the computer's. */
    private static Optional<ZoneId> zone(Cell cell) {
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(ZoneId.of(cell.text()));
        } catch (DateTimeException e) {
            Optional<String> near = Nearest.of(cell.text(), ZoneId.getAvailableZoneIds());
            return near.isPresent() ? cell.fault("zone.near", near.get()) : cell.fault("zone");
        }
    }
}
