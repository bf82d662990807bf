package bandwright.rules.paper;

import bandwright.rules.table.Names;
import java.util.List;
import java.util.Optional;

/** printers.csv, in the order of the table. */
public record Printers(List<Printer> list) {
    public Printers {
        list = List.copyOf(list);
    }

    public Optional<Printer> find(String id) {
        return list.stream().filter(printer -> Names.same(printer.id(), id)).findFirst();
    }
}
