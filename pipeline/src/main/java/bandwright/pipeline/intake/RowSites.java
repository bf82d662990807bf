package bandwright.pipeline.intake;

import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Row;
import bandwright.rules.orders.OrderField;
import bandwright.rules.orders.Site;
import bandwright.rules.orders.Sites;
import bandwright.rules.table.Names;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which site a row is of. A row that was held before it was understood has none of its own, yet it must reach the slip
 * of its order: its cell says the site, or its file does.
 */
public final class RowSites {
    private final List<Site> sites;
    private final Map<List<String>, String> files = new HashMap<>();

    public RowSites(List<InboxFile> read, Sites sites) {
        this.sites = sites.list();
        for (InboxFile file : read) {
            files.put(List.of(file.file(), file.sheet().orElse("")), file.site());
        }
    }

    /** The site's name; empty where no site is known. */
    public String of(Row row) {
        String cell = row.cell(OrderField.SITE).text().strip();
        if (cell.isEmpty()) {
            From from = row.from();
            return files.getOrDefault(List.of(from.file(), from.sheet().orElse("")), "");
        }
        return find(cell).map(Site::name).orElse(cell);
    }

    /** The words by which that site says nothing, such as "N/A". */
    public List<String> emptyWords(String site) {
        return find(site).or(() -> find("")).map(Site::emptyWords).orElse(List.of());
    }

    private Optional<Site> find(String name) {
        return sites.stream().filter(site -> Names.same(site.name(), name)).findFirst();
    }
}
