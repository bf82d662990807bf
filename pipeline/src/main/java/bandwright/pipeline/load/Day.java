package bandwright.pipeline.load;

import bandwright.pipeline.size.Unit;
import bandwright.pipeline.size.Urgency;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One person's day at the machines, one load after the other. Every machine is switched on when the day begins. What
 * ships first is pressed first; among loads of one date a machine that is set for them already goes on, and the one that
 * is warm soonest begins.
 */
final class Day {
    private final List<Series> waiting;
    private final List<Load> loads = new ArrayList<>();
    private final Map<String, Likeness> setFor = new HashMap<>();
    private long now = 0;

    Day(List<Series> waiting) {
        this.waiting = new ArrayList<>(waiting);
    }

    List<Load> loads() {
        while (!waiting.isEmpty()) {
            Series next = waiting.stream().min(turn()).orElseThrow();
            press(next);
            if (next.isDone()) {
                waiting.remove(next);
            }
        }
        return List.copyOf(loads);
    }

    private Comparator<Series> turn() {
        return Comparator.comparing((Series series) -> Urgency.shipBy(series.mostUrgent()))
                .thenComparing(series -> !isLast(series))
                .thenComparing(series -> !isSet(series))
                .thenComparingLong(this::startOf)
                .thenComparing(Series::mostUrgent, Urgency.OF_UNIT);
    }

    private void press(Series series) {
        long start = startOf(series);
        long end = start + series.cycleSeconds();
        List<Unit> units = series.takeLoad();
        loads.add(new Load(
                loads.size() + 1,
                series.source(),
                1,
                units.get(0).matched().setting(),
                seconds(start),
                seconds(end),
                units));
        setFor.put(series.likeness().source(), series.likeness());
        now = end;
    }

    /** When the person is free and the machine is warm. */
    private long startOf(Series series) {
        return Math.max(now, series.source().warmUpSeconds());
    }

    /** Whether that machine is set for those pieces since its last load. */
    private boolean isSet(Series series) {
        return series.likeness().equals(setFor.get(series.likeness().source()));
    }

    private boolean isLast(Series series) {
        return !loads.isEmpty()
                && Likeness.of(loads.get(loads.size() - 1).units().get(0)).equals(series.likeness());
    }

    /** A plan of more than 68 years stands still at its end rather than wrap round. */
    private static int seconds(long seconds) {
        return (int) Math.min(Integer.MAX_VALUE, seconds);
    }
}
