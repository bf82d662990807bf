package bandwright.pipeline.intake;

import bandwright.pipeline.intake.format.GridRow;
import bandwright.pipeline.intake.format.Merge;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Row;
import bandwright.rules.orders.Site;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Lays the rows of one sheet on their piles, and tells what of them a person may not expect. */
final class SheetReading {
    /** Row numbers that a message names. */
    private static final int NAMED = 5;

    private final String file;
    private final Optional<String> sheet;
    private final Site site;
    private final RowReading reading;
    private final LineNumbers numbers;
    private final Piles piles;
    private final List<Integer> hidden = new ArrayList<>();
    private final List<Integer> totals = new ArrayList<>();

    SheetReading(String file, Optional<String> sheet, Site site, RowReading reading, LineNumbers numbers, Piles piles) {
        this.file = file;
        this.sheet = sheet;
        this.site = site;
        this.reading = reading;
        this.numbers = numbers;
        this.piles = piles;
    }

    void read(OrderTable table, List<Merge> merges) {
        Continuation continuation = new Continuation(site);
        for (GridRow each : new MergedCells(merges, table.header()).filled(table.rows())) {
            Row row = new Row(new From(file, sheet, each.number()), table.header(), each.cells());
            if (row.isEmpty() || table.notOrders().contains(each.number())) {
                piles.empty(row);
            } else if (Totals.is(row)) {
                totals.add(each.number());
                piles.empty(row);
            } else {
                noteHidden(each);
                piles.read(reading.read(continuation.joined(row), site, numbers));
            }
        }
    }

    private void noteHidden(GridRow row) {
        if (row.isHidden()) {
            hidden.add(row.number());
        }
    }

    String message() {
        List<String> sentences = new ArrayList<>();
        said("rows-hidden", hidden).ifPresent(sentences::add);
        said("rows-totals", totals).ifPresent(sentences::add);
        return String.join(" ", sentences);
    }

    private static Optional<String> said(String key, List<Integer> rows) {
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        String first = rows.stream().limit(NAMED).map(String::valueOf).collect(Collectors.joining(", "));
        return Optional.of(Words.say("intake." + key, rows.size(), rows.size() > NAMED ? first + ", ..." : first));
    }
}
