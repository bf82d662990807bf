package bandwright.pipeline.size;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.owed.OwedLine;
import bandwright.pipeline.owed.OwedPiece;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.designs.Design;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

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
    private record Alike(Blank blank, HeatSource source, PressSetting setting, Design design, ArtworkFile artwork) {
        static Alike of(MatchedLine line) {
            return new Alike(line.blank(), line.source(), line.setting(), line.design(), line.artwork());
        }
    }

    /**
     * Every line, in its order, ends as one unit a piece, or held.
     *
     * @param paper the paper that the command line names; empty = the shop's papers
     * @param takenIds of units that were made before: no unit gets one of them
     */
    public static Split<Unit> each(List<OwedLine> lines, Rulebook rules, Optional<String> paper, Set<String> takenIds) {
        Sizing sizing = new Sizing(new SizeLaw(rules, paper), new UnitIds(takenIds));
        List<Unit> made = new ArrayList<>();
        List<HeldRow> held = new ArrayList<>();
        for (OwedLine owed : lines) {
            MatchedLine line = owed.matched();
            Outcome<Sized> outcome = sizing.answers.computeIfAbsent(Alike.of(line), alike -> sizing.law.of(line));
            if (outcome instanceof Outcome.Made<Sized> sized) {
                sizing.addUnits(owed, sized.value(), made);
            } else {
                OrderLine row = line.line();
                held.add(new HeldRow(
                        row.row(), row.order(), owed.pieces().size(), ((Outcome.Held<Sized>) outcome).reason()));
            }
        }
        return new Split<>(made, held);
    }

    private void addUnits(OwedLine owed, Sized sized, List<Unit> units) {
        for (OwedPiece piece : owed.pieces()) {
            units.add(new Unit(
                    ids.next(
                            owed.matched().line(),
                            piece.piece(),
                            piece.remakeOf().isPresent()),
                    owed.matched(),
                    piece.piece(),
                    sized.band(),
                    sized.transfer(),
                    sized.rooms(),
                    OptionalInt.of(sized.ppi()),
                    sized.notes()));
        }
    }
}
