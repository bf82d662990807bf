package bandwright.rules.table;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;

/** All tables of a rulebook as they are written, one of each kind. */
public final class Tables {
    private final Map<TableKind, Table> all = new EnumMap<>(TableKind.class);

    public Tables(Collection<Table> tables) {
        tables.forEach(table -> all.put(table.kind(), table));
        if (all.size() != TableKind.values().length) {
            throw new IllegalArgumentException("a rulebook of " + all.keySet());
        }
    }

    public Table get(TableKind kind) {
        Table table = all.get(kind);
        if (table == null) {
            throw new IllegalStateException("no " + kind.file());
        }
        return table;
    }

    public Collection<Table> list() {
        return all.values();
    }

    /**
     * Whether a reference of that table to something that isn't there is somebody's fault: in a table of the shop's own,
     * or where everything is built in.
     */
    public boolean isStrict(TableKind kind) {
        return get(kind).isOwn() || list().stream().noneMatch(Table::isOwn);
    }
}
