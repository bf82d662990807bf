package bandwright.rules.paper;

import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Sector;
import bandwright.rules.table.Names;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which papers a transfer may be printed on: the wanted ones that take it, else the printer's next one that does. With
 * letter wanted and a printer that takes letter and tabloid, a beer stein's band goes on tabloid.
 */
public final class PaperChoice {
    private final FlagLaw flag;
    private final List<Offer> wanted;
    private final List<Offer> next;

    private PaperChoice(FlagLaw flag, List<Offer> wanted, List<Offer> next) {
        this.flag = flag;
        this.wanted = wanted;
        this.next = next;
    }

    /**
     * The papers that a run may print on.
     *
     * @param paper the id that the command line names; empty = the shop's papers
     */
    public static PaperChoice of(Rulebook rules, Optional<String> paper) {
        List<String> ids = paper.map(List::of).orElse(rules.shop().papers());
        if (ids.isEmpty()) {
            ids = rules.papers().list().stream().limit(1).map(Paper::id).toList();
        }
        List<Offer> wanted = ids.stream()
                .flatMap(id -> rules.papers().find(id).stream())
                .flatMap(sheet -> printerOf(sheet, rules).map(by -> new Offer(sheet, by)).stream())
                .distinct()
                .toList();
        return new PaperChoice(FlagLaw.of(rules.shop()), wanted, nextAfter(wanted, rules));
    }

    /** What a transfer gets whose picture is printed straight. */
    public Answer forPicture(Length width, Length height) {
        return forTransfer(Footprint.straight(width, height, flag));
    }

    /** What a transfer gets whose picture is bent for a cone. */
    public Answer forPicture(Sector sector) {
        return forTransfer(Footprint.bent(sector, flag));
    }

    private Answer forTransfer(Footprint transfer) {
        List<PaperRoom> rooms = taking(wanted, transfer);
        if (!rooms.isEmpty()) {
            return new Answer(rooms, Optional.empty());
        }
        List<PaperRoom> others = taking(next, transfer);
        if (!others.isEmpty()) {
            return new Answer(others.subList(0, 1), Optional.empty());
        }
        return new Answer(List.of(), largest());
    }

    /**
     * The papers, if any.
     *
     * @param rooms the wanted ones that take the transfer, else the first of the others; empty = none does
     * @param largest where nothing takes it, the paper with the most room
     */
    public record Answer(List<PaperRoom> rooms, Optional<PaperRoom> largest) {
        public Answer {
            rooms = List.copyOf(rooms);
        }
    }

    /** A paper in the printer that would print it. */
    private record Offer(Paper paper, Printer printer) {}

    /** The shop's printer if it takes the paper, else the first of the table that does. */
    private static Optional<Printer> printerOf(Paper paper, Rulebook rules) {
        return Optional.of(rules.shop().printer())
                .flatMap(rules.printers()::find)
                .filter(printer -> takes(printer, paper))
                .or(() -> rules.printers().list().stream()
                        .filter(printer -> takes(printer, paper))
                        .findFirst());
    }

    private static boolean takes(Printer printer, Paper paper) {
        return printer.papers().stream().anyMatch(id -> Names.same(id, paper.id()));
    }

    /** What else the printers of the wanted papers take: first what follows in a printer's own order, then the rest. */
    private static List<Offer> nextAfter(List<Offer> wanted, Rulebook rules) {
        List<Offer> next = new ArrayList<>();
        for (Offer offer : wanted) {
            List<String> ids = offer.printer().papers();
            int at = indexOf(ids, offer.paper());
            for (int i = 1; i < ids.size(); i++) {
                rules.papers()
                        .find(ids.get((at + i) % ids.size()))
                        .map(other -> new Offer(other, offer.printer()))
                        .filter(other -> !wanted.contains(other) && !next.contains(other))
                        .ifPresent(next::add);
            }
        }
        return List.copyOf(next);
    }

    private static int indexOf(List<String> ids, Paper paper) {
        for (int i = 0; i < ids.size(); i++) {
            if (Names.same(ids.get(i), paper.id())) {
                return i;
            }
        }
        return 0;
    }

    private List<PaperRoom> taking(List<Offer> offers, Footprint transfer) {
        return rooms(offers).stream()
                .filter(room -> PaperLaw.takes(room, transfer))
                .toList();
    }

    private static List<PaperRoom> rooms(List<Offer> offers) {
        return offers.stream()
                .map(offer -> PaperRoom.of(offer.paper(), offer.printer()))
                .toList();
    }

    private Optional<PaperRoom> largest() {
        List<PaperRoom> all = new ArrayList<>(rooms(wanted));
        all.addAll(rooms(next));
        return all.stream()
                .max(Comparator.comparingDouble(room ->
                        room.inside().width().mm() * room.inside().height().mm()));
    }
}
