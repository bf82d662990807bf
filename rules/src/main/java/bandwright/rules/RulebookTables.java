package bandwright.rules;

import bandwright.rules.blanks.Blanks;
import bandwright.rules.designs.Designs;
import bandwright.rules.designs.Fonts;
import bandwright.rules.designs.Texts;
import bandwright.rules.heat.Cautions;
import bandwright.rules.heat.Circuits;
import bandwright.rules.heat.HeatSources;
import bandwright.rules.heat.PressSettings;
import bandwright.rules.orders.OrderColumns;
import bandwright.rules.orders.Products;
import bandwright.rules.orders.Sites;
import bandwright.rules.paper.Papers;
import bandwright.rules.paper.Printers;
import bandwright.rules.stock.Stock;
import bandwright.rules.table.Fault;
import bandwright.rules.table.Faults;
import bandwright.rules.table.RulesFolder;
import bandwright.rules.table.Table;
import bandwright.rules.table.TableKind;
import bandwright.rules.table.Tables;
import bandwright.rules.units.ShopUnits;
import java.util.List;

/** Makes the rulebook of its tables: files, then references, then what each cell means, then what must fit together. */
final class RulebookTables {
    private RulebookTables() {}

    static Rulebook read(RulesFolder folder) throws RulebookFaults {
        Faults faults = new Faults();
        Tables written = folder.tables(faults);
        Tables tables = References.resolved(written, faults);
        checkRows(written, tables, faults);
        Rulebook rulebook = rulebook(tables, folder, faults);
        List<Fault> all = faults.sorted();
        if (!all.isEmpty()) {
            throw new RulebookFaults(all);
        }
        return rulebook;
    }

    private static Rulebook rulebook(Tables tables, RulesFolder folder, Faults faults) {
        ShopKeys shop = ShopKeys.read(tables.get(TableKind.SHOP), faults);
        ShopUnits units = shop.shopUnits();
        Papers papers = Papers.read(tables.get(TableKind.PAPERS), units, faults);
        Printers printers = Printers.read(tables.get(TableKind.PRINTERS), units, folder, faults);
        HeatSources sources = HeatSources.read(tables.get(TableKind.HEAT_SOURCES), units, faults);
        Blanks blanks = Blanks.read(tables.get(TableKind.BLANKS), units, faults);
        return new Rulebook(
                shop.shop(papers, printers),
                SourcesOfBlanks.fitting(blanks, sources, tables, faults),
                sources,
                PressSettings.read(tables.get(TableKind.PRESS_SETTINGS), units, faults),
                papers,
                printers,
                Designs.read(tables.get(TableKind.DESIGNS), units, faults),
                Texts.read(tables.get(TableKind.TEXTS), units, faults),
                Fonts.read(tables.get(TableKind.FONTS), units, folder, faults),
                Products.read(tables.get(TableKind.PRODUCTS), units, faults),
                Sites.read(tables.get(TableKind.SITES), units, faults),
                OrderColumns.read(tables.get(TableKind.ORDER_COLUMNS), units, faults),
                Stock.read(tables.get(TableKind.STOCK), units, faults),
                Circuits.read(tables.get(TableKind.CIRCUITS), units, faults),
                Cautions.read(tables.get(TableKind.CAUTIONS), units, faults));
    }

    /** Tables that a shop can't do without need a row, before and after the built-in ones fell that refer to nothing. */
    private static void checkRows(Tables written, Tables tables, Faults faults) {
        for (Table table : tables.list()) {
            boolean isMissed =
                    table.isRead() && table.rows().isEmpty() && !table.kind().mayBeEmpty();
            if (isMissed && written.get(table.kind()).rows().isEmpty()) {
                faults.add(table.place(), "rows.none");
            } else if (isMissed) {
                faults.add(table.place(), "rows.fell");
            }
        }
    }
}
