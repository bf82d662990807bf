package bandwright.pipeline.load;

import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.size.Unit;
import bandwright.rules.heat.HeatSource;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** The loads of alike pieces that still wait, the most urgent first. */
final class Series {
    private final Likeness likeness;
    private final MatchedLine first;
    private final Deque<List<Unit>> loads;

    /** @param pieces all of that likeness, the most urgent first */
    Series(Likeness likeness, List<Unit> pieces) {
        this.likeness = likeness;
        this.first = pieces.get(0).matched();
        this.loads = new ArrayDeque<>(Filling.of(pieces, first.source().piecesPerLoad()));
    }

    Likeness likeness() {
        return likeness;
    }

    HeatSource source() {
        return first.source();
    }

    boolean isDone() {
        return loads.isEmpty();
    }

    /** The most urgent piece of all that wait. */
    Unit mostUrgent() {
        return loads.getFirst().get(0);
    }

    List<Unit> takeLoad() {
        return loads.remove();
    }

    /** Loading, each position with a turn between, unloading. */
    long cycleSeconds() {
        HeatSource source = source();
        long positions = Math.max(1, source.positions());
        return source.loadingSeconds()
                + positions * likeness.timeSeconds()
                + (positions - 1) * source.turnSeconds()
                + source.unloadingSeconds();
    }
}
