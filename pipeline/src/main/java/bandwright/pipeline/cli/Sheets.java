package bandwright.pipeline.cli;

import bandwright.rules.Rulebook;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.table.Names;
import bandwright.rules.table.Nearest;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Papers in sheets that a page to measure with may be printed on, the wanted ones first, and how they are asked for. */
final class Sheets {
    private Sheets() {}

    /** The named paper, or the shop's and then every other that a printer takes; no rolls. */
    static List<PaperRoom> rooms(Rulebook rules, Optional<String> paper) {
        List<String> ids =
                new ArrayList<>(paper.map(List::of).orElse(rules.shop().papers()));
        if (paper.isEmpty()) {
            rules.papers().list().stream().map(Paper::id).forEach(ids::add);
        }
        return ids.stream()
                .distinct()
                .flatMap(id -> rules.papers().find(id).stream())
                .filter(sheet -> !sheet.isRoll())
                .flatMap(sheet -> printer(rules, sheet).map(by -> PaperRoom.of(sheet, by)).stream())
                .toList();
    }

    /** Why a paper that somebody named can't be taken, whatever lies on it; empty where it can. */
    static Optional<String> refusal(Rulebook rules, Optional<String> paper) {
        if (paper.isEmpty()) {
            return Optional.empty();
        }
        Optional<Paper> found = rules.papers().find(paper.get());
        if (found.isEmpty()) {
            List<String> ids = rules.papers().list().stream().map(Paper::id).toList();
            return Optional.of(Words.say("sheet.no-such-paper", paper.get(), nearest(paper.get(), ids)));
        }
        if (found.get().isRoll()) {
            return Optional.of(Words.say("sheet.is-a-roll", found.get().id()));
        }
        return Optional.empty();
    }

    /** The name that comes nearest to what was typed, else all there are. */
    static String nearest(String typed, List<String> names) {
        return Nearest.of(typed, names).orElse(String.join(", ", names));
    }

    /** The shop's printer if it takes the paper, else the first that does. */
    private static Optional<Printer> printer(Rulebook rules, Paper paper) {
        return rules.printers()
                .find(rules.shop().printer())
                .filter(printer -> takes(printer, paper))
                .or(() -> rules.printers().list().stream()
                        .filter(printer -> takes(printer, paper))
                        .findFirst());
    }

    static boolean takes(Printer printer, Paper paper) {
        return printer.papers().stream().anyMatch(id -> Names.same(id, paper.id()));
    }
}
