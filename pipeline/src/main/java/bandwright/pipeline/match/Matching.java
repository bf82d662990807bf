package bandwright.pipeline.match;

import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.held.Reason;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.OrderLine;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.table.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a row's words mean: its blank, the heat source that presses it, its design and picture. A row that says "mug 11"
 * and "heron" becomes MUG-11-W in the clamp press with heron.jpg; one that says "herron" is held: "Did you mean heron?"
 */
public final class Matching {
    private final Rulebook rules;
    private final HeatMatch heat;
    private final DesignMatch designs;

    private Matching(Rulebook rules, ArtworkShelf shelf) {
        this.rules = rules;
        this.heat = new HeatMatch(rules);
        this.designs = new DesignMatch(rules, shelf);
    }

    /** Every line, in its order, ends in exactly one of the two lists. */
    public static Split<MatchedLine> each(List<OrderLine> lines, Rulebook rules, ArtworkShelf shelf) {
        Matching matching = new Matching(rules, shelf);
        List<MatchedLine> made = new ArrayList<>();
        List<HeldRow> held = new ArrayList<>();
        for (OrderLine line : lines) {
            Outcome<MatchedLine> outcome = matching.matched(line);
            if (outcome instanceof Outcome.Made<MatchedLine> matched) {
                made.add(matched.value());
            } else {
                Reason reason = ((Outcome.Held<MatchedLine>) outcome).reason();
                held.add(new HeldRow(line.row(), line.order(), line.quantity(), reason));
            }
        }
        return new Split<>(made, held);
    }

    private Outcome<MatchedLine> matched(OrderLine line) {
        return blank(line).then(blank -> heat.forRow(blank, line.heatSource())
                .then(chosen -> designs.forRow(line, blank, chosen.source())
                        .then(picked -> Outcome.made(new MatchedLine(
                                line, blank, chosen.source(), chosen.setting(), picked.design(), picked.artwork())))));
    }

    private Outcome<Blank> blank(OrderLine line) {
        Optional<Blank> blank = rules.blanks().find(line.sku());
        return blank.map(Outcome::made).orElseGet(() -> Outcome.held(unknown(line.sku())));
    }

    private MatchReason unknown(String asked) {
        List<String> names = rules.blanks().list().stream()
                .flatMap(blank -> Stream.concat(Stream.of(blank.sku()), blank.aliases().stream()))
                .toList();
        return new MatchReason.BlankUnknown(asked, Nearest.of(asked, names));
    }
}
