package bandwright.pipeline.load;

import bandwright.pipeline.match.MatchedLine;
import bandwright.rules.heat.HeatSource;
import java.util.ArrayList;
import java.util.List;

/** Loads of alike pieces, in the order in which they start, the most urgent first. */
record Series(Likeness likeness, MatchedLine first, List<Batch> batches) {
    Series {
        batches = List.copyOf(batches);
    }

    HeatSource source() {
        return first.source();
    }

    /** Loading, each position with a turn between, unloading. */
    long cycleSeconds() {
        return source().loadingSeconds() + pressSeconds() + source().unloadingSeconds();
    }

    private long pressSeconds() {
        return positions() * (long) likeness.timeSeconds() + (positions() - 1) * (long) source().turnSeconds();
    }

    private int positions() {
        return Math.max(1, source().positions());
    }

    /** When somebody is at it, from the start of a load: loading, each turn, unloading. */
    List<Span> hands() {
        List<Span> hands = new ArrayList<>();
        long at = source().loadingSeconds();
        hands.add(new Span(0, at));
        for (int position = 1; position < positions(); position++) {
            at += likeness.timeSeconds();
            hands.add(new Span(at, at + source().turnSeconds()));
            at += source().turnSeconds();
        }
        hands.add(new Span(at + likeness.timeSeconds(), cycleSeconds()));
        return hands;
    }
}
