package bandwright.pipeline.match;

import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.held.Reason;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.match.text.TextReading;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.table.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a row's words mean: its blank, the heat source that presses it, its design and picture. A row that says "mug 11"
 * and "heron" becomes MUG-11-W in the clamp press with heron.jpg; one that says "herron" is held: "Did you mean heron?"
 */
public final class Matching {
    private final Rulebook rules;
    private final HeatMatch heat;
    private final DesignMatch designs;
    private final TextReading texts;

    private Matching(Rulebook rules, ArtworkShelf shelf) {
        this.rules = rules;
        this.heat = new HeatMatch(rules);
        this.designs = new DesignMatch(rules, shelf);
        this.texts = new TextReading(rules);
    }

    /** Every line, in its order, ends in exactly one of the two lists; of a set that is held in part all is held. */
    public static Split<MatchedLine> each(List<OrderLine> lines, Rulebook rules, ArtworkShelf shelf) {
        Matching matching = new Matching(rules, shelf);
        List<MatchedLine> made = new ArrayList<>();
        List<HeldRow> held = new ArrayList<>();
        for (OrderLine line : lines) {
            Outcome<List<MatchedLine>> outcome = matching.matched(line);
            if (outcome instanceof Outcome.Made<List<MatchedLine>> matched) {
                made.addAll(matched.value());
            } else {
                Reason reason = ((Outcome.Held<List<MatchedLine>>) outcome).reason();
                held.add(new HeldRow(line.row(), line.order(), line.pieces(), reason));
            }
        }
        return new Split<>(made, held);
    }

    /** Its items first: without its design nobody can say what a text is. */
    private Outcome<List<MatchedLine>> matched(OrderLine line) {
        List<MatchedLine> matched = new ArrayList<>();
        for (Item item : drinkware(line)) {
            Outcome<MatchedLine> outcome = matched(line, item);
            if (outcome instanceof Outcome.Held<MatchedLine> held) {
                return Outcome.held(held.reason());
            }
            matched.add(((Outcome.Made<MatchedLine>) outcome).value());
        }
        return texts.deal(line).then(dealt -> Outcome.made(withPieces(matched, ItemPieces.of(line, dealt))));
    }

    private static List<Item> drinkware(OrderLine line) {
        return line.items().stream().filter(Item::isDrinkware).toList();
    }

    private static List<MatchedLine> withPieces(List<MatchedLine> matched, List<List<Piece>> pieces) {
        return IntStream.range(0, matched.size())
                .mapToObj(i -> matched.get(i).with(pieces.get(i)))
                .toList();
    }

    private Outcome<MatchedLine> matched(OrderLine line, Item item) {
        return blank(item).then(blank -> heat.forRow(blank, line.heatSource())
                .then(chosen -> designs.forRow(line, item, blank, chosen.source())
                        .then(picked -> Outcome.made(new MatchedLine(
                                line,
                                blank,
                                chosen.source(),
                                chosen.setting(),
                                picked.design(),
                                picked.artworks(),
                                List.of())))));
    }

    private Outcome<Blank> blank(Item item) {
        Optional<Blank> blank = rules.blanks().find(item.sku());
        return blank.map(Outcome::made).orElseGet(() -> Outcome.held(unknown(item.sku())));
    }

    private MatchReason unknown(String asked) {
        List<String> names = rules.blanks().list().stream()
                .flatMap(blank -> Stream.concat(Stream.of(blank.sku()), blank.aliases().stream()))
                .toList();
        return new MatchReason.BlankUnknown(asked, Nearest.of(asked, names));
    }
}
