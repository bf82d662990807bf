package bandwright.pipeline;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Row;
import bandwright.pipeline.size.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Gathers what became of each row of a run, whichever stage decided it. */
public final class RowFates {
    private final Map<From, Pieces> rows = new LinkedHashMap<>();

    /** What is known of a row so far. */
    private static final class Pieces {
        private final Row row;
        private Optional<OrderLine> line = Optional.empty();
        private final List<Unit> units = new ArrayList<>();
        private final List<HeldRow> held = new ArrayList<>();
        private final List<SkippedRow> skipped = new ArrayList<>();

        private Pieces(Row row) {
            this.row = row;
        }

        private RowFate fate() {
            return new RowFate(row, line, units, held, skipped);
        }
    }

    private RowFates() {}

    /** One for each row: files and sheets in the order of the inbox, rows from the top. */
    public static List<RowFate> of(Run run) {
        RowFates fates = new RowFates();
        run.orders().lines().forEach(line -> fates.at(line.row()).line = Optional.of(line));
        run.orders().empty().forEach(fates::at);
        run.units().forEach(unit -> fates.at(unit.matched().line().row()).units.add(unit));
        run.held().forEach(held -> fates.at(held.row()).held.add(held));
        run.skipped().forEach(skipped -> fates.at(skipped.row()).skipped.add(skipped));
        return fates.rows.values().stream()
                .map(Pieces::fate)
                .sorted(inboxOrder(run.orders().files()))
                .toList();
    }

    private Pieces at(Row row) {
        return rows.computeIfAbsent(row.from(), from -> new Pieces(row));
    }

    private static Comparator<RowFate> inboxOrder(List<InboxFile> files) {
        Map<List<String>, Integer> places = new HashMap<>();
        for (InboxFile file : files) {
            places.putIfAbsent(List.of(file.file(), file.sheet().orElse("")), places.size());
        }
        return Comparator.comparingInt(
                        (RowFate fate) -> place(places, fate.row().from()))
                .thenComparing(fate -> fate.row().from());
    }

    private static int place(Map<List<String>, Integer> places, From from) {
        return places.getOrDefault(List.of(from.file(), from.sheet().orElse("")), Integer.MAX_VALUE);
    }
}
