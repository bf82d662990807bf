package bandwright.pipeline.owed;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Reason;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Row;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Gathers what becomes of each piece, whatever order is decided first, and gives it in the order of the rows. */
final class Decisions {
    private final IdentityHashMap<MatchedLine, Integer> places = new IdentityHashMap<>();
    private final Map<Integer, OwedLine> lines = new TreeMap<>();
    private final List<HeldRow> kept = new ArrayList<>();
    private final Map<RowAndReason, HeldRow> held = new LinkedHashMap<>();
    private final Map<From, SkippedRow> skipped = new LinkedHashMap<>();
    private final List<SkippedRow> keptSkips = new ArrayList<>();
    private final List<Stop> stops = new ArrayList<>();

    private record RowAndReason(From row, Reason reason) {}

    Decisions(List<MatchedLine> matched) {
        matched.forEach(line -> places.put(line, places.size()));
    }

    void make(Slot slot, String content, Optional<String> remakeOf) {
        make(slot.line(), slot.line(), new OwedPiece(slot.piece(), slot.texts(), slot.signature(), content, remakeOf));
    }

    /** @param line the matched line, perhaps with another number */
    void make(MatchedLine matched, MatchedLine line, OwedPiece piece) {
        int place = places.getOrDefault(matched, places.size());
        List<OwedPiece> pieces = new ArrayList<>();
        Optional.ofNullable(lines.get(place)).ifPresent(known -> pieces.addAll(known.pieces()));
        pieces.add(piece);
        lines.put(place, new OwedLine(line, pieces));
    }

    void hold(Slot slot, Reason reason) {
        HeldRow one = new HeldRow(slot.row(), slot.line().line().order(), 1, reason);
        held.merge(new RowAndReason(slot.row().from(), reason), one, HeldRow::and);
    }

    void hold(SkippedRow instead, Reason reason) {
        HeldRow row = new HeldRow(instead.row(), instead.order(), instead.pieces(), reason);
        held.put(new RowAndReason(instead.row().from(), reason), row);
    }

    void skip(Slot slot, String message) {
        skip(slot.row(), slot.line().line().order(), 1, message);
    }

    void skip(HeldRow instead, String message) {
        skip(instead.row(), instead.order(), instead.pieces(), message);
    }

    private void skip(Row row, String order, int pieces, String message) {
        SkippedRow one = new SkippedRow(row, order, pieces, SkippedRow.ALREADY_MADE, message);
        skipped.merge(row.from(), one, Decisions::sum);
    }

    private static SkippedRow sum(SkippedRow one, SkippedRow other) {
        String message =
                one.message().contains(other.message()) ? one.message() : one.message() + " " + other.message();
        return new SkippedRow(one.row(), one.order(), one.pieces() + other.pieces(), SkippedRow.ALREADY_MADE, message);
    }

    void keep(HeldRow row) {
        kept.add(row);
    }

    void keep(SkippedRow row) {
        keptSkips.add(row);
    }

    void stop(Stop stop) {
        stops.add(stop);
    }

    /** Pieces of those rows that stay held; a row whose quantity is unclear counts as one. */
    int keptPieces(List<HeldRow> rows) {
        return rows.stream()
                .filter(kept::contains)
                .mapToInt(row -> Math.max(1, row.pieces()))
                .sum();
    }

    Owed owed() {
        List<HeldRow> allHeld = new ArrayList<>(kept);
        allHeld.addAll(held.values());
        allHeld.sort(Comparator.comparing(row -> row.row().from()));
        List<SkippedRow> allSkipped = new ArrayList<>(keptSkips);
        allSkipped.addAll(skipped.values());
        allSkipped.sort(Comparator.comparing(row -> row.row().from()));
        return new Owed(List.copyOf(lines.values()), allHeld, allSkipped, stops);
    }
}
