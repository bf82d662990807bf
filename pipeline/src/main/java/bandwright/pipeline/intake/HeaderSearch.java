package bandwright.pipeline.intake;

import bandwright.pipeline.held.HeldFile;
import bandwright.pipeline.intake.format.Grid;
import bandwright.pipeline.intake.format.GridRow;
import bandwright.pipeline.rows.Cell;
import bandwright.pipeline.rows.Header;
import bandwright.rules.orders.OrderColumns;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Site;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which row of a sheet is its header, and which site it speaks for. The header is the first row within the first 20
 * that names the order and one of sku and product, or the very row that the site's header_row says. Titles and totals
 * above it are passed over.
 */
final class HeaderSearch {
    private static final int WITHIN = 20;

    private final OrderColumns columns;
    private final SiteList sites;

    HeaderSearch(OrderColumns columns, SiteList sites) {
        this.columns = columns;
        this.sites = sites;
    }

    /**
     * A sheet that is orders.
     *
     * @param rows those under the header
     */
    record Found(Site site, Header header, List<GridRow> rows) {}

    /** How many fields that row names if it is a header row at any site, else 0. */
    int score(List<Cell> row) {
        return sites.all().stream()
                .mapToInt(site -> fields(row, site).size())
                .max()
                .orElse(0);
    }

    /** Empty where the sheet is no orders. */
    Optional<Found> find(Grid grid, String file) {
        Optional<Site> named = firstFile(grid).or(() -> Optional.of(file)).flatMap(sites::findByFile);
        if (named.isPresent()) {
            return find(grid, named.get());
        }
        // A site must beat the plain headers to be taken for the one that wrote the file; of equals the first row wins.
        Optional<Found> best = find(grid, sites.plain());
        for (Site site : sites.all()) {
            Optional<Found> other = find(grid, site);
            if (size(other) > size(best)) {
                best = other;
            }
        }
        return best;
    }

    /** A sheet of a held file is of the site whose file its rows were first read in. */
    private static Optional<String> firstFile(Grid grid) {
        Optional<Integer> from = Optional.empty();
        for (GridRow row : grid.rows()) {
            List<String> texts = row.cells().stream().map(Cell::text).toList();
            if (from.isEmpty()) {
                from = row.number() <= WITHIN ? HeldFile.findFrom(texts) : Optional.empty();
            } else if (from.get() < texts.size() && !texts.get(from.get()).isBlank()) {
                return Optional.of(texts.get(from.get()).split(" \\|", 2)[0]);
            }
            if (from.isEmpty() && row.number() > WITHIN) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static int size(Optional<Found> found) {
        return found.map(f -> f.header().fields().size()).orElse(0);
    }

    private Optional<Found> find(Grid grid, Site site) {
        List<GridRow> rows = grid.rows();
        for (int i = 0; i < rows.size(); i++) {
            GridRow row = rows.get(i);
            if (!mayBeHeader(row, site)) {
                continue;
            }
            Optional<Header> header = header(row, site);
            if (header.isPresent()) {
                return Optional.of(new Found(site, header.get(), rows.subList(i + 1, rows.size())));
            }
        }
        return Optional.empty();
    }

    /** That row as the header of a table; empty where it is none. */
    Optional<Header> header(GridRow row, Site site) {
        Map<OrderField, Integer> fields = fields(row.cells(), site);
        return fields.isEmpty()
                ? Optional.empty()
                : Optional.of(new Header(row.cells().stream().map(Cell::text).toList(), fields));
    }

    private static boolean mayBeHeader(GridRow row, Site site) {
        return site.headerRow().isPresent() ? row.number() == site.headerRow().getAsInt() : row.number() <= WITHIN;
    }

    /** The columns of that row's fields; none where it is no header row. Of two columns for one field the first wins. */
    private Map<OrderField, Integer> fields(List<Cell> row, Site site) {
        Map<OrderField, Integer> fields = new LinkedHashMap<>();
        for (int i = 0; i < row.size(); i++) {
            int column = i;
            columns.find(site.name(), row.get(i).text()).ifPresent(field -> fields.putIfAbsent(field, column));
        }
        boolean isHeader = fields.containsKey(OrderField.ORDER)
                && (fields.containsKey(OrderField.SKU) || fields.containsKey(OrderField.PRODUCT));
        return isHeader ? fields : Map.of();
    }
}
