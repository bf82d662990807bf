package bandwright.rules.designs;

import bandwright.rules.table.Names;
import java.util.List;

/** texts.csv: the text fields that designs take. */
public record Texts(List<TextField> list) {
    public Texts {
        list = List.copyOf(list);
    }

    /** The fields of that design, in the order of the table. */
    public List<TextField> of(String design) {
        return list.stream().filter(text -> Names.same(text.design(), design)).toList();
    }
}
