package bandwright.rules.paper;

import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Once;
import bandwright.rules.table.Plausible;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.Length;
import bandwright.rules.units.ShopUnits;
import java.util.List;
import java.util.Optional;

/** papers.csv, in the order of the table. */
public record Papers(List<Paper> list) {
    public Papers {
        list = List.copyOf(list);
    }

    public Optional<Paper> find(String id) {
        return list.stream().filter(paper -> Names.same(paper.id(), id)).findFirst();
    }

    /** Reads papers.csv. */
    public static Papers read(Table table, ShopUnits units, Faults faults) {
        Once ids = new Once();
        return new Papers(table.read(units, faults, row -> paper(row, ids)));
    }

    private static Paper paper(Row row, Once ids) {
        String id = row.cell("id").needed().text();
        ids.take(row, "id", id);
        Paper paper = new Paper(
                id,
                row.text("name").isEmpty() ? id : row.text("name"),
                row.cell("width").needed().length(Plausible.PAGE).orElse(Length.ZERO),
                row.cell("height").length(Plausible.PAGE),
                row.cell("max_length").length(Plausible.PAGE),
                margin(row, "margin_top"),
                margin(row, "margin_right"),
                margin(row, "margin_bottom"),
                margin(row, "margin_left"),
                row.cell("cost").cost(),
                row.text("note"));
        checkMargins(row, paper);
        Roll.check(row, paper);
        return paper;
    }

    private static Length margin(Row row, String column) {
        return row.cell(column).length(Plausible.MARGIN).orElse(Length.ZERO);
    }

    private static void checkMargins(Row row, Paper paper) {
        boolean isRead = row.areSound("width", "height", "margin_top", "margin_right", "margin_bottom", "margin_left");
        if (!isRead || row.text("width").isEmpty()) {
            return;
        }
        if (!paper.width().longerThan(paper.marginLeft().plus(paper.marginRight()))) {
            row.fault("width", "paper.narrow");
        }
        if (paper.height()
                .filter(height -> !height.longerThan(paper.marginTop().plus(paper.marginBottom())))
                .isPresent()) {
            row.fault("height", "paper.narrow");
        }
    }
}
