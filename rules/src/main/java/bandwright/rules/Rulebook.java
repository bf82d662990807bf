package bandwright.rules;

import bandwright.rules.blanks.Blanks;
import bandwright.rules.designs.Designs;
import bandwright.rules.designs.FontFile;
import bandwright.rules.designs.Texts;
import bandwright.rules.heat.Cautions;
import bandwright.rules.heat.Circuit;
import bandwright.rules.heat.HeatSources;
import bandwright.rules.heat.PressSettings;
import bandwright.rules.orders.OrderColumns;
import bandwright.rules.orders.Product;
import bandwright.rules.orders.Sites;
import bandwright.rules.paper.Papers;
import bandwright.rules.paper.Printers;
import bandwright.rules.stock.Stock;
import bandwright.rules.table.RulesFolder;
import bandwright.rules.table.TableFile;
import bandwright.rules.table.TableKind;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Everything that a shop has written down: all tables, read and checked. */
public record Rulebook(
        Shop shop,
        Blanks blanks,
        HeatSources heatSources,
        PressSettings pressSettings,
        Papers papers,
        Printers printers,
        Designs designs,
        Texts texts,
        List<FontFile> fonts,
        List<Product> products,
        Sites sites,
        OrderColumns orderColumns,
        Stock stock,
        List<Circuit> circuits,
        Cautions cautions) {
    public Rulebook {
        fonts = List.copyOf(fonts);
        products = List.copyOf(products);
        circuits = List.copyOf(circuits);
    }

    /**
     * Reads the rulebook.
     *
     * @param folder the shop's own tables, each of which replaces the built-in one whole; empty = all built in
     * @throws RulebookFaults with every fault of every table
     */
    public static Rulebook read(Optional<Path> folder) throws RulebookFaults {
        return RulebookTables.read(tables(folder));
    }

    /** Where a table of a rulebook that was read is written, to add a row to it. */
    public static TableFile file(Optional<Path> folder, TableKind kind) throws IOException {
        return tables(folder).file(kind);
    }

    private static RulesFolder tables(Optional<Path> folder) {
        return new RulesFolder("/bandwright/tables", folder);
    }
}
