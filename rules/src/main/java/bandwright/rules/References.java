package bandwright.rules;

import bandwright.rules.designs.FontFile;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Nearest;
import bandwright.rules.table.Place;
import bandwright.rules.table.Quoted;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.table.TableKind;
import bandwright.rules.table.Tables;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the tables say about each other. A reference to something that isn't there is a fault in a shop's own table; a
 * built-in row that refers to nothing is left out, and so is what refers to that row, until nothing more falls. What is
 * left is written as its own table writes it: a setting for the alias "white mug" is a setting for MUG-11-W.
 */
final class References {
    /** Every reference: from a column of a table to the names of another. */
    private enum Reference {
        BLANK_SOURCES(TableKind.BLANKS, "heat_sources", TableKind.HEAT_SOURCES, Many.OPTIONAL),
        SOURCE_CIRCUIT(TableKind.HEAT_SOURCES, "circuit", TableKind.CIRCUITS, Many.ONE),
        SETTING_SKU(TableKind.PRESS_SETTINGS, "sku", TableKind.BLANKS, Many.ONE),
        SETTING_CAUTIONS(TableKind.PRESS_SETTINGS, "cautions", TableKind.CAUTIONS, Many.OPTIONAL),
        PRINTER_PAPERS(TableKind.PRINTERS, "papers", TableKind.PAPERS, Many.NEEDED),
        SHOP_PAPERS(TableKind.SHOP, "paper", TableKind.PAPERS, Many.NEEDED),
        SHOP_PRINTER(TableKind.SHOP, "printer", TableKind.PRINTERS, Many.ONE),
        TEXT_DESIGN(TableKind.TEXTS, "design", TableKind.DESIGNS, Many.ONE),
        TEXT_FONT(TableKind.TEXTS, "font", TableKind.FONTS, Many.ONE),
        PRODUCT_BLANK(TableKind.PRODUCTS, "blank", TableKind.BLANKS, Many.ONE),
        PRODUCT_DESIGN(TableKind.PRODUCTS, "design", TableKind.DESIGNS, Many.ONE),
        PRODUCT_SITE(TableKind.PRODUCTS, "site", TableKind.SITES, Many.ONE),
        COLUMN_SITE(TableKind.ORDER_COLUMNS, "site", TableKind.SITES, Many.ONE),
        STOCK_SKU(TableKind.STOCK, "sku", TableKind.BLANKS, Many.ONE);

        private final TableKind from;
        private final String name;
        private final TableKind to;
        private final Many many;

        Reference(TableKind from, String name, TableKind to, Many many) {
            this.from = from;
            this.name = name;
            this.to = to;
            this.many = many;
        }

        /** The column of the cell that refers; in shop.csv the references are told apart by their key. */
        private String column() {
            return from == TableKind.SHOP ? "value" : name;
        }

        private boolean isIn(Row.Written row) {
            return from != TableKind.SHOP || Names.same(row.cell("key"), name);
        }

        private List<String> asked(Row.Written row) {
            if (!isIn(row)) {
                return List.of();
            }
            String cell = row.cell(column());
            if (many == Many.ONE) {
                return cell.isEmpty() ? List.of() : List.of(cell);
            }
            return Arrays.stream(cell.split("\\|"))
                    .map(String::strip)
                    .filter(part -> !part.isEmpty())
                    .toList();
        }
    }

    /** How many names a cell holds, and whether its row can do without them. */
    private enum Many {
        ONE,
        NEEDED,
        OPTIONAL
    }

    private final Map<TableKind, Table> tables = new LinkedHashMap<>();
    private final Tables written;
    private final Faults faults;

    private References(Tables written, Faults faults) {
        this.written = written;
        this.faults = faults;
        written.list().forEach(table -> tables.put(table.kind(), table));
    }

    static Tables resolved(Tables written, Faults faults) {
        References references = new References(written, faults);
        while (references.pruneOnce()) {
            // A row that falls may take others with it.
        }
        references.check();
        return new Tables(references.tables.values());
    }

    /** Leaves out what refers to nothing in tables that came with the program; whether anything fell. */
    private boolean pruneOnce() {
        boolean anyFell = false;
        for (Reference reference : Reference.values()) {
            Table table = table(reference.from);
            if (written.isStrict(reference.from) || !table(reference.to).isRead()) {
                continue;
            }
            Map<String, String> names = names(reference.to);
            List<Row.Written> kept = table.rows().stream()
                    .flatMap(row -> pruned(row, reference, names).stream())
                    .toList();
            anyFell |= kept.size() < table.rows().size();
            tables.put(reference.from, table.with(kept));
        }
        return anyFell;
    }

    private static Optional<Row.Written> pruned(Row.Written row, Reference reference, Map<String, String> names) {
        List<String> asked = reference.asked(row);
        List<String> there = asked.stream()
                .filter(name -> names.containsKey(Names.fold(name)))
                .toList();
        if (there.size() == asked.size()) {
            return Optional.of(row);
        }
        return there.isEmpty() && reference.many != Many.OPTIONAL
                ? Optional.empty()
                : Optional.of(with(row, reference.column(), String.join("|", there)));
    }

    /** Notes what refers to nothing in the shop's own tables, and writes every name as its own table does. */
    private void check() {
        for (Reference reference : Reference.values()) {
            Table table = table(reference.from);
            if (!table(reference.to).isRead()) {
                continue;
            }
            Map<String, String> names = names(reference.to);
            tables.put(
                    reference.from,
                    table.with(table.rows().stream()
                            .map(row -> checked(row, reference, names))
                            .toList()));
        }
    }

    private Row.Written checked(Row.Written row, Reference reference, Map<String, String> names) {
        List<String> asked = reference.asked(row);
        if (asked.isEmpty()) {
            return row;
        }
        for (String name : asked) {
            if (!names.containsKey(Names.fold(name))) {
                missing(new Place(reference.from.file(), row.number(), reference.column()), name, reference.to, names);
            }
        }
        String own = asked.stream()
                .map(name -> names.getOrDefault(Names.fold(name), name))
                .distinct()
                .collect(Collectors.joining("|"));
        return with(row, reference.column(), own);
    }

    private void missing(Place place, String name, TableKind to, Map<String, String> names) {
        Optional<String> near = Nearest.of(name, names.values());
        if (near.isPresent()) {
            faults.add(place, "reference.near", to.file(), Quoted.text(name), near.get());
        } else {
            faults.add(place, "reference", to.file(), Quoted.text(name));
        }
    }

    private static Row.Written with(Row.Written row, String column, String text) {
        Map<String, String> cells = new HashMap<>(row.cells());
        cells.put(column, text);
        return new Row.Written(row.number(), cells);
    }

    private Table table(TableKind kind) {
        return Objects.requireNonNull(tables.get(kind));
    }

    /** The names that things of that table go by, folded, each with the name that it is written by. */
    private Map<String, String> names(TableKind kind) {
        Map<String, String> names = new LinkedHashMap<>();
        String column = kind.columns().get(0);
        table(kind).rows().forEach(row -> names.putIfAbsent(Names.fold(row.cell(column)), row.cell(column)));
        if (kind == TableKind.FONTS) {
            FontFile.BUNDLED.forEach(id -> names.putIfAbsent(id, id));
        }
        if (kind == TableKind.BLANKS) {
            table(kind).rows().forEach(row -> List.of(row.cell("aliases").split("\\|"))
                    .forEach(alias -> names.putIfAbsent(Names.fold(alias), row.cell(column))));
        }
        names.remove("");
        return names;
    }
}
