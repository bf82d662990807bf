package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Handling;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.load.MachineDay;
import bandwright.pipeline.load.PressDay;
import bandwright.pipeline.write.day.Clock;
import bandwright.pipeline.write.day.DayBars;
import bandwright.rules.Shop;
import bandwright.rules.day.Break;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What hands do between the loads that go in, in the order of time: switch a machine on or off, have a break, and turn or
 * take out what went in before something else did.
 */
final class Between {
    /**
     * One thing to do.
     *
     * @param at seconds from the start of the day's work
     */
    record Line(long at, String words) {}

    private final List<Line> lines = new ArrayList<>();

    Between(PressDay day, Shop shop) {
        for (MachineDay machine : day.machines()) {
            String name = DayBars.name(machine.source(), machine.machine());
            long warm = (long) machine.on() + machine.source().warmUpSeconds();
            add(machine.on(), Words.say("checklist.switch-on", name, Clock.at(shop, warm)));
            add(machine.off(), Words.say("checklist.switch-off", name));
        }
        for (Break pause : shop.breaks()) {
            long from = shop.secondsTo(pause.from());
            if (from > 0 && from < day.endSeconds()) {
                add(from, Words.say("checklist.break", pause.to()));
            }
        }
        day.hands().stream().filter(handling -> isApart(handling, day)).forEach(handling -> {
            Load load = day.loads().get(handling.load() - 1);
            String name = DayBars.name(load.source(), load.machine());
            String key = handling.kind() == Handling.Kind.TURN ? "checklist.turn" : "checklist.take-out";
            String words = Words.say(key, load.number(), name);
            add(handling.from(), shop.people() > 1 ? Words.say("checklist.by", words, handling.person()) : words);
        });
        lines.sort(Comparator.comparingLong(Line::at));
    }

    private void add(long at, String words) {
        lines.add(new Line(at, words));
    }

    /** Whether something else goes in, is turned or comes out between the loading and this. */
    private static boolean isApart(Handling handling, PressDay day) {
        if (handling.kind() == Handling.Kind.LOAD) {
            return false;
        }
        int start = day.loads().get(handling.load() - 1).startSeconds();
        return day.hands().stream()
                .anyMatch(other ->
                        other.load() != handling.load() && other.from() >= start && other.from() <= handling.from());
    }

    /** Whether there is something to do after one load went in and before, or when, the next one goes in. */
    boolean parts(Load one, Load next) {
        return lines.stream().anyMatch(line -> line.at() > one.startSeconds() && line.at() <= next.startSeconds());
    }

    /** Takes the lines that come before a load goes in. */
    List<Line> takeUntil(long seconds) {
        List<Line> due = lines.stream().filter(line -> line.at() <= seconds).toList();
        lines.removeAll(due);
        return due;
    }
}
