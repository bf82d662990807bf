package bandwright.rules.paper;

import bandwright.rules.table.Names;
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
}
