package bandwright.pipeline.write.day;

import bandwright.pipeline.load.Handling;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.load.MachineDay;
import bandwright.pipeline.load.PressDay;
import bandwright.rules.Shop;
import bandwright.rules.day.Break;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A day as bars over a line of time: a row for each machine, then one for each person. Seconds from the start of the
 * day's work.
 *
 * @param from where the line of time begins
 * @param to where it ends
 * @param hours the full hours between
 */
public record DayBars(long from, long to, List<Row> rows, List<Bar> breaks, List<Hour> hours) {
    private static final int HOUR = 3600;

    /** What a bar stands for. */
    public enum Kind {
        WARM_UP,
        HOT,
        LOAD,
        HANDS,
        BREAK
    }

    /** A bar; {@code words} stands in it where there is room. */
    public record Bar(Kind kind, long from, long to, String words) {}

    /** A machine or a person. */
    public record Row(String name, List<Bar> bars) {
        public Row {
            bars = List.copyOf(bars);
        }
    }

    /** A full hour and what the clock shows. */
    public record Hour(long at, String words) {}

    public DayBars {
        rows = List.copyOf(rows);
        breaks = List.copyOf(breaks);
        hours = List.copyOf(hours);
    }

    /** The bars of a day that has loads. */
    public static DayBars of(PressDay day, Shop shop) {
        List<Row> rows = new ArrayList<>();
        day.machines().forEach(machine -> rows.add(machine(machine, day)));
        int people = day.hands().stream().mapToInt(Handling::person).max().orElse(0);
        IntStream.rangeClosed(1, people).forEach(person -> rows.add(person(person, day)));
        long end = day.endSeconds();
        List<Bar> breaks = new ArrayList<>();
        for (Break pause : shop.breaks()) {
            long from = shop.secondsTo(pause.from());
            long to = shop.secondsTo(pause.to());
            if (to > 0 && from < end) {
                breaks.add(new Bar(Kind.BREAK, Math.max(0, from), Math.min(end, to), Words.say("day.break")));
            }
        }
        return new DayBars(0, Math.max(1, end), rows, breaks, hours(shop, end));
    }

    /** The name of a machine; its number where there are several of its kind. */
    public static String name(HeatSource source, int machine) {
        return source.machines() > 1 ? Words.say("day.machine", source.name(), machine) : source.name();
    }

    private static Row machine(MachineDay machine, PressDay day) {
        List<Bar> bars = new ArrayList<>();
        long warm =
                Math.min(machine.off(), (long) machine.on() + machine.source().warmUpSeconds());
        bars.add(new Bar(Kind.WARM_UP, machine.on(), warm, ""));
        bars.add(new Bar(Kind.HOT, warm, machine.off(), ""));
        for (Load load : day.loads()) {
            if (load.source().equals(machine.source()) && load.machine() == machine.machine()) {
                bars.add(new Bar(Kind.LOAD, load.startSeconds(), load.endSeconds(), Integer.toString(load.number())));
            }
        }
        return new Row(name(machine.source(), machine.machine()), bars);
    }

    private static Row person(int person, PressDay day) {
        return new Row(
                Words.say("day.person", person),
                day.hands().stream()
                        .filter(handling -> handling.person() == person)
                        .map(handling -> new Bar(Kind.HANDS, handling.from(), handling.to(), ""))
                        .toList());
    }

    private static List<Hour> hours(Shop shop, long end) {
        int start = shop.dayStarts().toSecondOfDay();
        // A plan that runs for weeks shows days rather than thousands of hours.
        long step = HOUR * Math.max(1L, end / (24L * HOUR));
        List<Hour> hours = new ArrayList<>();
        for (long hour = -Math.floorDiv(-start, HOUR) * (long) HOUR; hour <= start + end; hour += step) {
            hours.add(new Hour(hour - start, Clock.hand(shop, hour - start)));
        }
        return hours;
    }
}
