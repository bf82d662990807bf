package bandwright.pipeline.owed;

import bandwright.pipeline.held.HeldFile;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.past.OrderKey;
import bandwright.pipeline.past.Past;
import bandwright.pipeline.past.PastHold;
import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.past.Signature;
import bandwright.pipeline.rows.Row;
import bandwright.rules.orders.OrderField;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What of one order is still to make. Ada's order says two mugs, one was printed last week: one is to make. Printed with
 * "Ada" and now stated with "Eva": held, and the printed one heads the stop list.
 */
final class OrderOwed {
    private final OrderKey key;
    private final OrderRows rows;
    private final Past past;
    private final Decisions decisions;
    /** Good pieces of earlier runs that no row of this inbox speaks of yet. */
    private final List<PastPiece> open;
    /** Spoiled pieces in whose place none was made yet. */
    private final List<PastPiece> spoiled;
    /** Numbers of pieces that are given away, by line. */
    private final Map<String, Set<Integer>> numbers = new LinkedHashMap<>();
    /** Of pieces that a held file adds now. */
    private final List<OwedPiece> added = new ArrayList<>();

    OrderOwed(OrderKey key, OrderRows rows, Past past, Decisions decisions) {
        this.key = key;
        this.rows = rows;
        this.past = past;
        this.decisions = decisions;
        this.open = new ArrayList<>(past.listGood(key));
        this.spoiled = new ArrayList<>(past.listSpoiled(key));
        Set<String> remade = past.pieces().getOrDefault(key, List.of()).stream()
                .flatMap(piece -> piece.remakeOf().stream())
                .collect(Collectors.toSet());
        spoiled.removeIf(piece -> remade.contains(piece.id()));
        past.pieces().getOrDefault(key, List.of()).forEach(piece -> take(piece.line(), piece.piece()));
    }

    void decide() {
        rows.added.forEach(this::add);
        rows.held.forEach(this::heldAgain);
        rows.skipped.forEach(this::cancelled);
        Optional<OwedReason> contradiction = Contradiction.of(rows);
        if (contradiction.isPresent()) {
            rows.stated.forEach(line -> Slot.of(line).forEach(slot -> decisions.hold(slot, contradiction.get())));
        } else {
            stated();
        }
    }

    private void take(String line, int piece) {
        numbers.computeIfAbsent(line, any -> new HashSet<>()).add(piece);
    }

    /** A mended row: its pieces come on top of what was stated before, but not twice if its file is dropped twice. */
    private void add(MatchedLine mended) {
        Row row = mended.line().row();
        String origin = HeldFile.findOrigin(row).orElse("");
        Optional<PastHold> hold = past.findHold(key, origin);
        String content = hold.map(PastHold::content).orElseGet(() -> Signature.digest(List.of(origin)));
        int madeBefore = hold.map(PastHold::made).orElse(0);
        int madeSince = (int) past.listGood(key).stream()
                        .filter(piece -> piece.content().equals(content))
                        .count()
                - madeBefore;
        boolean hasOwnNumber = !row.cell(OrderField.LINE).isBlank();
        MatchedLine line = hold.filter(held -> !hasOwnNumber)
                .map(held -> mended.numbered(held.line()))
                .orElse(mended);
        int nth = 0;
        for (Slot slot : Slot.of(line)) {
            if (++nth <= madeSince) {
                decisions.skip(slot, Words.say("skipped.already-made.mended"));
                continue;
            }
            Optional<PastPiece> remade =
                    takeSpoiled(slot.signature(), piece -> piece.content().equals(content));
            int number = remade.map(PastPiece::piece)
                    .orElseGet(() -> free(line.line().line(), slot.piece()));
            OwedPiece piece = new OwedPiece(number, slot.texts(), slot.signature(), content, remade.map(PastPiece::id));
            added.add(piece);
            decisions.make(mended, line, piece);
        }
    }

    /** Its own number, or if that is given away the first that isn't. */
    private int free(String line, int own) {
        Set<Integer> taken = numbers.computeIfAbsent(line, any -> new HashSet<>());
        if (taken.add(own)) {
            return own;
        }
        int number = 1;
        while (!taken.add(number)) {
            number++;
        }
        return number;
    }

    /** A row that is as faulty as it was in an older export, but was mended since in a held file, is done. */
    private void heldAgain(HeldRow held) {
        if (HeldFile.findOrigin(held.row()).isPresent()) {
            decisions.keep(held);
            return;
        }
        String content = RowContent.of(held.row());
        List<PastPiece> mended =
                open.stream().filter(piece -> piece.content().equals(content)).toList();
        long now =
                added.stream().filter(piece -> piece.content().equals(content)).count();
        if (mended.size() + now < Math.max(1, held.pieces())) {
            decisions.keep(held);
            return;
        }
        open.removeAll(mended);
        decisions.skip(held, Words.say("skipped.already-made.mended"));
    }

    private void cancelled(SkippedRow skipped) {
        List<PastPiece> printed = HeldFile.findOrigin(skipped.row()).isPresent() ? List.of() : printedOf(skipped.row());
        if (printed.isEmpty()) {
            decisions.keep(skipped);
            return;
        }
        open.removeAll(printed);
        String wanted = Words.say("owed.cancelled");
        decisions.hold(skipped, changed(printed, wanted, OrderField.STATUS));
        printed.forEach(piece -> decisions.stop(new Stop(piece, skipped.row(), wanted)));
    }

    /** By what the row ordered, else by its line's number, else all of an order of which nothing is wanted any more. */
    private List<PastPiece> printedOf(Row row) {
        String content = RowContent.of(row);
        List<PastPiece> same =
                open.stream().filter(piece -> piece.content().equals(content)).toList();
        if (!same.isEmpty()) {
            return same;
        }
        String number = row.cell(OrderField.LINE).text().strip();
        if (!number.isEmpty()) {
            return open.stream().filter(piece -> piece.line().equals(number)).toList();
        }
        boolean isAllCancelled = rows.stated.isEmpty() && rows.held.isEmpty();
        return isAllCancelled ? List.copyOf(open) : List.of();
    }

    private void stated() {
        Map<Signature, Asked> asked = Asked.of(rows.stated);
        List<Slot> missing = new ArrayList<>();
        asked.forEach((signature, slots) -> missing.addAll(missing(signature, slots)));
        List<PastPiece> orphans = open.stream()
                .filter(piece -> !asked.containsKey(piece.signature()))
                .toList();
        int faulty = decisions.keptPieces(rows.held);
        boolean isChanged = !missing.isEmpty() && orphans.size() > faulty;
        for (Slot slot : missing) {
            if (isChanged) {
                decisions.hold(slot, changed(orphans, slot.words(), slot.changedField(orphans)));
            } else {
                Optional<PastPiece> remade = takeSpoiled(
                        slot.signature(),
                        piece -> piece.line().equals(slot.line().line().line()) && piece.piece() == slot.piece());
                remade = remade.isPresent() ? remade : takeSpoiled(slot.signature(), piece -> true);
                decisions.make(slot, RowContent.of(slot.row()), remade.map(PastPiece::id));
            }
        }
        if (isChanged) {
            Slot first = missing.get(0);
            orphans.forEach(piece -> decisions.stop(new Stop(piece, first.row(), first.words())));
        }
    }

    /** Of one thing that the order asks for, the pieces that were not made yet. */
    private List<Slot> missing(Signature signature, Asked asked) {
        List<PastPiece> printed = new ArrayList<>(open.stream()
                .filter(piece -> piece.signature().equals(signature))
                .toList());
        asked.repeated().forEach(slot -> decisions.skip(slot, Words.say("skipped.already-made.file", asked.file())));
        if (printed.size() > asked.slots().size()) {
            fewer(printed, asked);
            return List.of();
        }
        List<Slot> missing = new ArrayList<>(asked.slots());
        for (Slot slot : asked.slots()) {
            printed.stream().filter(slot::isOf).findFirst().ifPresent(piece -> {
                printed.remove(piece);
                missing.remove(slot);
                skip(slot, piece);
            });
        }
        for (PastPiece piece : printed) {
            skip(missing.remove(0), piece);
        }
        long now = added.stream()
                .filter(piece -> piece.signature().equals(signature))
                .count();
        for (; now > 0 && !missing.isEmpty(); now--) {
            decisions.skip(missing.remove(0), Words.say("skipped.already-made.mended"));
        }
        return missing;
    }

    private void skip(Slot slot, PastPiece piece) {
        decisions.skip(slot, Words.say("skipped.already-made.run", piece.run()));
    }

    private void fewer(List<PastPiece> printed, Asked asked) {
        String wanted =
                Words.say("owed.fewer", asked.slots().size(), printed.get(0).what());
        OwedReason reason = changed(printed, wanted, OrderField.QUANTITY);
        asked.slots().forEach(slot -> decisions.hold(slot, reason));
        printed.subList(asked.slots().size(), printed.size())
                .forEach(piece ->
                        decisions.stop(new Stop(piece, asked.slots().get(0).row(), wanted)));
    }

    private static OwedReason changed(List<PastPiece> printed, String wanted, OrderField field) {
        List<String> pieces =
                printed.stream().map(piece -> piece.id() + " " + piece.what()).toList();
        return new OwedReason.ChangedAfterPrinting(pieces, wanted, field);
    }

    private Optional<PastPiece> takeSpoiled(Signature signature, Predicate<PastPiece> which) {
        Optional<PastPiece> found = spoiled.stream()
                .filter(piece -> piece.signature().equals(signature) && which.test(piece))
                .findFirst();
        found.ifPresent(spoiled::remove);
        return found;
    }
}
