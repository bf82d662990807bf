package bandwright.pipeline;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.Orders;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Row;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether a run lost or doubled anything. Every row read ends in exactly one of made, part, held, skipped, empty; pieces
 * ordered = made + held + skipped; every unit is on exactly one sheet and in exactly one load. 58 rows read, 50 made, 1
 * part, 4 held, 2 skipped, 1 empty: it closes.
 */
public final class Conservation {
    private final Run run;
    private final List<String> mismatches = new ArrayList<>();

    private Conservation(Run run) {
        this.run = run;
    }

    /** What the records of a run lost or doubled, a line each; empty where the sums close. */
    public static List<String> check(Run run) {
        Conservation law = new Conservation(run);
        law.everyRowReadOnce();
        law.everyRowDecided();
        law.everyPieceOnce();
        law.everyUnitOnce();
        return List.copyOf(law.mismatches);
    }

    /** What the files in a run's folder lost or doubled, compared with the records. */
    public static List<String> checkFiles(Run run, Path folder) throws IOException {
        return FilesBack.compare(run, folder);
    }

    private void everyRowReadOnce() {
        Orders orders = run.orders();
        Set<From> decided = new HashSet<>();
        orders.lines().forEach(line -> decided.add(line.row().from()));
        orders.held().forEach(held -> decided.add(held.row().from()));
        List<Row> rows = Stream.of(
                        orders.lines().stream().map(OrderLine::row),
                        orders.held().stream().map(HeldRow::row),
                        wholly(orders.skipped(), decided),
                        orders.empty().stream())
                .flatMap(one -> one)
                .toList();
        Set<From> seen = new HashSet<>();
        Map<List<String>, Integer> perSheet = new HashMap<>();
        for (Row row : rows) {
            if (!seen.add(row.from())) {
                say("row-twice", row.from());
            }
            perSheet.merge(sheet(row.from().file(), row.from().sheet().orElse("")), 1, Integer::sum);
        }
        for (InboxFile file : orders.files()) {
            int found = perSheet.getOrDefault(sheet(file.file(), file.sheet().orElse("")), 0);
            if (found != file.rows()) {
                say("rows", place(file.file(), file.sheet().orElse("")), file.rows(), found);
            }
        }
        int read = orders.files().stream().mapToInt(InboxFile::rows).sum();
        if (read != rows.size()) {
            say("rows-in-all", read, rows.size());
        }
    }

    /** A set of a mug and a booklet is a line and skipped in part. */
    private static Stream<Row> wholly(List<SkippedRow> skipped, Set<From> decided) {
        return skipped.stream()
                .filter(row -> !row.code().equals(SkippedRow.NOT_DRINKWARE)
                        || !decided.contains(row.row().from()))
                .map(SkippedRow::row);
    }

    private static List<String> sheet(String file, String sheet) {
        return List.of(file, sheet);
    }

    /** What intake itself decided must still stand in the run. */
    private void everyRowDecided() {
        Set<From> decided = new HashSet<>();
        run.held().forEach(held -> decided.add(held.row().from()));
        run.skipped().forEach(skipped -> decided.add(skipped.row().from()));
        Stream.concat(
                        run.orders().held().stream().map(HeldRow::row),
                        run.orders().skipped().stream().map(SkippedRow::row))
                .map(Row::from)
                .filter(from -> !decided.contains(from))
                .forEach(from -> say("row-lost", from));
    }

    private void everyPieceOnce() {
        Set<From> known = new HashSet<>();
        run.orders().lines().forEach(line -> known.add(line.row().from()));
        run.orders().held().forEach(held -> known.add(held.row().from()));
        run.orders().skipped().forEach(skipped -> known.add(skipped.row().from()));
        Set<From> empty = new HashSet<>();
        run.orders().empty().forEach(row -> empty.add(row.from()));
        for (RowFate fate : RowFates.of(run)) {
            From from = fate.row().from();
            boolean isEmpty = fate.end() == RowEnd.EMPTY;
            if (isEmpty != empty.contains(from)) {
                say(isEmpty ? "row-lost" : "empty-row-decided", from);
            } else if (!isEmpty && !known.contains(from)) {
                say("row-unknown", from);
            }
            int ended = fate.units().size() + fate.heldPieces() + fate.skippedPieces();
            if (ended != fate.ordered()) {
                say("pieces", from, fate.ordered(), fate.units().size(), fate.heldPieces(), fate.skippedPieces());
            }
            if (fate.units().stream().map(Unit::piece).distinct().count()
                    < fate.units().size()) {
                say("piece-twice", from);
            }
        }
    }

    private void everyUnitOnce() {
        Map<String, Integer> onSheets = new HashMap<>();
        Map<String, Integer> inLoads = new HashMap<>();
        Set<Integer> numbers = new HashSet<>();
        for (Load load : run.loads()) {
            if (!numbers.add(load.number())) {
                say("load-twice", load.number());
            }
            load.units().forEach(unit -> count(inLoads, unit.id(), "unit-in-two-loads"));
        }
        Map<String, Integer> loads = loadOfUnit();
        for (Sheet sheet : run.tiled().sheets()) {
            for (Placed placed : sheet.placed()) {
                String id = placed.unit().id();
                count(onSheets, id, "unit-on-two-sheets");
                int load = loads.getOrDefault(id, placed.load());
                if (load != placed.load()) {
                    say("unit-in-wrong-load", id, placed.load(), load);
                }
            }
        }
        Map<String, Integer> units = new HashMap<>();
        run.units().forEach(unit -> count(units, unit.id(), "unit-twice"));
        missing(units, onSheets, "unit-on-no-sheet");
        missing(units, inLoads, "unit-in-no-load");
        missing(onSheets, units, "unit-unknown");
        missing(inLoads, units, "unit-unknown");
    }

    private Map<String, Integer> loadOfUnit() {
        Map<String, Integer> loads = new HashMap<>();
        run.loads().forEach(load -> load.units().forEach(unit -> loads.put(unit.id(), load.number())));
        return loads;
    }

    private void count(Map<String, Integer> counts, String id, String saidIfTwice) {
        if (counts.merge(id, 1, Integer::sum) == 2) {
            say(saidIfTwice, id);
        }
    }

    private void missing(Map<String, Integer> wanted, Map<String, Integer> found, String said) {
        wanted.keySet().stream().filter(id -> !found.containsKey(id)).sorted().forEach(id -> say(said, id));
    }

    private void say(String what, From from, Object... more) {
        Object[] about = new Object[more.length + 1];
        about[0] = place(from.file(), from.sheet().orElse("")) + ", " + Words.say("conservation.row", from.row());
        System.arraycopy(more, 0, about, 1, more.length);
        say(what, about);
    }

    private void say(String what, Object... about) {
        mismatches.add(Words.say("conservation." + what, about));
    }

    private static String place(String file, String sheet) {
        return sheet.isEmpty() ? file : file + ", " + sheet;
    }
}
