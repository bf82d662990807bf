package bandwright.pipeline.intake;

import bandwright.pipeline.held.HeldFile;
import bandwright.pipeline.intake.format.Grid;
import bandwright.rules.Rulebook;
import bandwright.rules.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What has been ordered? Order files to order lines: headers found, cells understood, every row under a header in
 * exactly one list. A row is empty if it stands between filled rows and has nothing to say, if it is the header of
 * another table (as in exports that were pasted together) or its title, or if it only sums up.
 */
public final class Intake {
    private Intake() {}

    /**
     * Reads the order files of the inbox, in that order. A file that can't be read stops no other: it is named with
     * reason and cure.
     */
    public static Orders read(List<Path> files, Rulebook rules) {
        SiteList sites = new SiteList(rules.sites());
        HeaderSearch headers = new HeaderSearch(rules.orderColumns(), sites);
        return orders(OrderFile.read(files, headers), headers, new RowReading(sites, rules));
    }

    private static Orders orders(List<OrderFile> files, HeaderSearch headers, RowReading reading) {
        Piles piles = new Piles();
        for (OrderFile file : files) {
            if (!file.refusal().isEmpty()) {
                piles.file(named(file, Optional.empty(), InboxFile.State.UNREADABLE, file.refusal()));
            } else {
                sort(file, headers, reading, piles);
            }
        }
        return piles.orders();
    }

    private static void sort(OrderFile file, HeaderSearch headers, RowReading reading, Piles piles) {
        List<Optional<HeaderSearch.Found>> found = file.grids().stream()
                .map(grid -> grid.isHidden() ? Optional.<HeaderSearch.Found>empty() : headers.find(grid, file.name()))
                .toList();
        boolean hasOrders = found.stream().anyMatch(Optional::isPresent);
        LineNumbers numbers = new LineNumbers();
        for (int i = 0; i < file.grids().size(); i++) {
            Grid grid = file.grids().get(i);
            if (found.get(i).isPresent()) {
                HeaderSearch.Found orders = found.get(i).get();
                SheetReading sheet =
                        new SheetReading(file.name(), grid.sheet(), orders.site(), reading, numbers, piles);
                sheet(file, grid, orders, headers, sheet, piles);
            } else if (!isOurChoices(grid, found)) {
                piles.file(notRead(file, grid, hasOrders));
            }
        }
        if (file.grids().isEmpty()) {
            piles.file(named(file, Optional.empty(), InboxFile.State.NOT_ORDERS, sentence("no-header")));
        }
    }

    /** The lists that a held file's cells offer: not a sheet that a person would miss. */
    private static boolean isOurChoices(Grid grid, List<Optional<HeaderSearch.Found>> found) {
        return grid.isHidden()
                && grid.sheet().equals(Optional.of(HeldFile.CHOICES))
                && found.stream()
                        .flatMap(Optional::stream)
                        .anyMatch(sheet -> HeldFile.has(sheet.header().texts()));
    }

    private static void sheet(
            OrderFile file,
            Grid grid,
            HeaderSearch.Found found,
            HeaderSearch headers,
            SheetReading sheet,
            Piles piles) {
        for (OrderTable table : OrderTable.all(found, headers)) {
            sheet.read(table, grid.merges());
        }
        int rows = found.rows().size();
        String message = sheet.message();
        piles.file(new InboxFile(file.name(), grid.sheet(), found.site().name(), rows, InboxFile.State.READ, message));
    }

    private static InboxFile notRead(OrderFile file, Grid grid, boolean hasOrders) {
        if (grid.isHidden()) {
            return named(file, grid.sheet(), InboxFile.State.HIDDEN, sentence("sheet-hidden"));
        }
        String message = hasOrders ? sentence("sheet-aside") : sentence("no-header");
        return named(file, grid.sheet(), InboxFile.State.NOT_ORDERS, message);
    }

    private static InboxFile named(OrderFile file, Optional<String> sheet, InboxFile.State state, String message) {
        return new InboxFile(file.name(), sheet, "", 0, state, message);
    }

    private static String sentence(String fault) {
        return Words.say("fault." + fault) + " " + Words.say("fault." + fault + ".cure");
    }
}
