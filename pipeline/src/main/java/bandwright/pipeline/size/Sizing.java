package bandwright.pipeline.size;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.held.Reason;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.owed.OwedLine;
import bandwright.pipeline.owed.OwedPiece;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.rows.Row;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.designs.Design;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * What gets printed for each piece: a row of two mugs with a heron becomes the units Q1042-1-1 and Q1042-1-2, which share
 * one transfer of 212.73 x 95.25 mm. Rows that ask for the same are worked out once.
 */
public final class Sizing {
    private final SizeLaw law;
    private final UnitIds ids;
    private final Map<Alike, Outcome<Sized>> answers = new HashMap<>();

    private Sizing(SizeLaw law, UnitIds ids) {
        this.law = law;
        this.ids = ids;
    }

    /** What makes two rows alike to this stage. */
    private record Alike(
            Blank blank,
            HeatSource source,
            PressSetting setting,
            Design design,
            List<ArtworkFile> artworks,
            SortedMap<String, String> texts) {
        static Alike of(MatchedLine line, SortedMap<String, String> texts) {
            return new Alike(line.blank(), line.source(), line.setting(), line.design(), line.artworks(), texts);
        }
    }

    /**
     * Every line, in its order, ends as one unit a piece, or held.
     *
     * @param sights where its pictures are looked at
     * @param paper the paper that the command line names; empty = the shop's papers
     * @param takenIds of units that were made before: no unit gets one of them
     */
    public static Split<Unit> each(
            List<OwedLine> lines, Rulebook rules, Sights sights, Optional<String> paper, Set<String> takenIds) {
        Sizing sizing = new Sizing(new SizeLaw(rules, sights, paper), new UnitIds(takenIds));
        sizing.law.begin(lines);
        List<Unit> made = new ArrayList<>();
        List<HeldRow> held = new ArrayList<>();
        for (List<OwedLine> row : byRow(lines)) {
            Optional<Reason> reason = row.stream().flatMap(sizing::whyNot).findFirst();
            if (reason.isPresent()) {
                held.add(held(row, reason.get()));
            } else {
                row.forEach(owed -> sizing.addUnits(owed, made));
            }
        }
        return new Split<>(made, held);
    }

    /** The items of one row lie together; a set is made whole or waits whole. */
    private static List<List<OwedLine>> byRow(List<OwedLine> lines) {
        IdentityHashMap<Row, List<OwedLine>> rows = new IdentityHashMap<>();
        List<List<OwedLine>> inOrder = new ArrayList<>();
        for (OwedLine owed : lines) {
            rows.computeIfAbsent(owed.matched().line().row(), any -> {
                        List<OwedLine> row = new ArrayList<>();
                        inOrder.add(row);
                        return row;
                    })
                    .add(owed);
        }
        return inOrder;
    }

    private static HeldRow held(List<OwedLine> row, Reason reason) {
        OrderLine line = row.get(0).matched().line();
        int pieces = row.stream().mapToInt(owed -> owed.pieces().size()).sum();
        return new HeldRow(line.row(), line.order(), pieces, reason);
    }

    private Outcome<Sized> sized(OwedLine owed, OwedPiece piece) {
        Alike alike = Alike.of(owed.matched(), piece.texts());
        return answers.computeIfAbsent(alike, any -> law.of(owed.matched(), piece.texts()));
    }

    /** What holds an item. */
    private Stream<Reason> whyNot(OwedLine owed) {
        return owed.pieces().stream()
                .map(piece -> sized(owed, piece))
                .flatMap(outcome ->
                        outcome instanceof Outcome.Held<Sized> held ? Stream.of(held.reason()) : Stream.of());
    }

    private void addUnits(OwedLine owed, List<Unit> units) {
        for (OwedPiece piece : owed.pieces()) {
            Sized sized = ((Outcome.Made<Sized>) sized(owed, piece)).value();
            units.add(new Unit(
                    ids.next(
                            owed.matched().line(),
                            piece.piece(),
                            piece.remakeOf().isPresent()),
                    owed.matched(),
                    piece.piece(),
                    piece.texts(),
                    sized.band(),
                    sized.transfer(),
                    sized.rooms(),
                    sized.ppi(),
                    sized.colourShift(),
                    sized.notes()));
        }
    }
}
