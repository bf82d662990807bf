package bandwright.pipeline.intake;

import bandwright.pipeline.intake.format.GridRow;
import bandwright.pipeline.rows.Header;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One table of a sheet: a header and the rows under it. A sheet may have several below each other, each with its
 * columns in an order of its own and a title above its header.
 *
 * @param notOrders the numbers of the rows that are titles and headers of the next tables
 */
record OrderTable(Header header, List<GridRow> rows, Set<Integer> notOrders) {
    OrderTable {
        rows = List.copyOf(rows);
        notOrders = Set.copyOf(notOrders);
    }

    /** The tables of a sheet of that site, from its first header on; each row is in one of them. */
    static List<OrderTable> all(HeaderSearch.Found found, HeaderSearch headers) {
        List<OrderTable> tables = new ArrayList<>();
        Header header = found.header();
        int start = 0;
        for (int i = 0; i < found.rows().size(); i++) {
            Optional<Header> next = headers.header(found.rows().get(i), found.site());
            if (next.isPresent()) {
                tables.add(above(header, found.rows().subList(start, i + 1)));
                header = next.get();
                start = i + 1;
            }
        }
        tables.add(
                new OrderTable(header, found.rows().subList(start, found.rows().size()), Set.of()));
        return tables;
    }

    /** The table whose last row is the header of the next: so are rows of one cell right above that, its title. */
    private static OrderTable above(Header header, List<GridRow> rows) {
        Set<Integer> notOrders = new HashSet<>();
        notOrders.add(rows.get(rows.size() - 1).number());
        for (int i = rows.size() - 2; i >= 0 && isTitle(rows.get(i)); i--) {
            notOrders.add(rows.get(i).number());
        }
        return new OrderTable(header, rows, notOrders);
    }

    private static boolean isTitle(GridRow row) {
        return row.cells().stream().filter(cell -> !cell.isBlank()).count() == 1;
    }
}
