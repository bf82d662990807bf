package bandwright.rules.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the tables lie: the built-in ones inside the program, and a shop's own folder, each of whose tables replaces the
 * built-in one whole. Fonts and colour profiles lie beside the tables that name them.
 *
 * @param builtIn the name of the resource folder of the built-in tables
 */
public record RulesFolder(String builtIn, Optional<Path> folder) {
    /** A table with more bytes than this is none that somebody wrote. */
    private static final long MOST_BYTES = 20_000_000;

    public Tables tables(Faults faults) {
        Map<TableKind, Path> own = folder.map(f -> own(f, faults)).orElse(Map.of());
        List<Table> tables = new ArrayList<>();
        for (TableKind kind : TableKind.values()) {
            Path file = own.get(kind);
            tables.add(file == null ? builtIn(kind, faults) : read(kind, file, faults));
        }
        return new Tables(tables);
    }

    /** Where a table is written; for a folder whose tables were read without a fault. */
    public TableFile file(TableKind kind) throws IOException {
        Optional<Path> own = folder.map(home -> own(home, new Faults()).get(kind));
        return new TableFile(own, CsvTable.header(own.isPresent() ? Files.readAllBytes(own.get()) : builtIn(kind)));
    }

    private byte[] builtIn(TableKind kind) throws IOException {
        try (InputStream in = RulesFolder.class.getResourceAsStream(builtIn + "/" + kind.file())) {
            if (in == null) {
                throw new IllegalStateException(kind.file() + " is missing from the build");
            }
            return in.readAllBytes();
        }
    }

    private Table builtIn(TableKind kind, Faults faults) {
        try {
            return CsvTable.parse(kind, false, builtIn(kind), faults);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Table read(TableKind kind, Path file, Faults faults) {
        try {
            if (Files.size(file) <= MOST_BYTES) {
                return CsvTable.parse(kind, true, Files.readAllBytes(file), faults);
            }
            faults.add(new Place(kind.file(), 0, ""), "table.huge", MOST_BYTES / 1_000_000);
        } catch (IOException e) {
            faults.add(new Place(kind.file(), 0, ""), "table.unreadable");
        }
        return Table.unread(kind, true);
    }

    /** The tables in the shop's folder; a CSV file that is none of them is a fault. */
    private static Map<TableKind, Path> own(Path folder, Faults faults) {
        Map<TableKind, Path> own = new EnumMap<>(TableKind.class);
        for (Path file : csvFiles(folder, faults)) {
            String name = String.valueOf(file.getFileName());
            Optional<TableKind> kind = TableKind.find(name);
            Place place = new Place(Quoted.text(name), 0, "");
            if (kind.isEmpty()) {
                unknown(name, place, faults);
            } else if (own.putIfAbsent(kind.get(), file) != null) {
                faults.add(place, "table.twice", kind.get().file());
            }
        }
        return own;
    }

    private static void unknown(String name, Place place, Faults faults) {
        Nearest.of(name, TableKind.files())
                .ifPresentOrElse(
                        near -> faults.add(place, "table.near", near),
                        () -> faults.add(place, "table", String.join(", ", TableKind.files())));
    }

    private static List<Path> csvFiles(Path folder, Faults faults) {
        Place place = new Place(Quoted.text(folder.toString()), 0, "");
        if (!Files.isDirectory(folder)) {
            faults.add(place, Files.exists(folder) ? "folder.file" : "folder.missing");
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(RulesFolder::isTable).sorted().toList();
        } catch (IOException | UncheckedIOException e) {
            faults.add(place, "folder.unreadable");
            return List.of();
        }
    }

    private static boolean isTable(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.endsWith(".csv") && !name.startsWith(".") && !name.startsWith("~$");
    }

    /** The file that a cell names, beside the cell's table; empty if it isn't there or is one of the program's own. */
    public Optional<Path> find(boolean isOwn, String name) {
        return isOwn && holds(true, name) ? folder.map(home -> home.resolve(name)) : Optional.empty();
    }

    /** Whether a file that a cell names lies beside the cell's table, and not somewhere outside of the folder. */
    public boolean holds(boolean isOwn, String name) {
        if (!isOwn || folder.isEmpty()) {
            return !name.contains("..") && RulesFolder.class.getResource(builtIn + "/" + name) != null;
        }
        try {
            Path home = folder.get().toRealPath();
            Path file = home.resolve(name).normalize();
            return file.startsWith(home)
                    && Files.isRegularFile(file)
                    && file.toRealPath().startsWith(home);
        } catch (IOException | InvalidPathException e) {
            return false;
        }
    }
}
