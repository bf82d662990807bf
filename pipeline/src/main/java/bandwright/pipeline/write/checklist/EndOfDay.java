package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.load.PressDay;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.day.Clock;
import bandwright.pipeline.write.day.DayBars;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.rules.Shop;
import bandwright.rules.heat.Rest;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What is done when the last piece is out: heaters off, what still cools, what is counted. */
final class EndOfDay {
    private EndOfDay() {}

    static void write(Pages pages, PressDay day, Shop shop) {
        pages.keep(Text.of(Words.say("checklist.evening"), Style.HEADING), BeforeStart.ROOM);
        pages.add(Gap.mm(1.5));
        for (String words : lines(day, shop)) {
            pages.add(BeforeStart.ticked(pages, words));
        }
        pages.add(Gap.mm(6));
    }

    private static List<String> lines(PressDay day, Shop shop) {
        List<String> words = new ArrayList<>();
        words.add(Words.say(
                "checklist.heaters-off",
                day.machines().stream()
                        .map(machine -> DayBars.name(machine.source(), machine.machine()))
                        .collect(Collectors.joining(", "))));
        List<String> cooling = cooling(day, shop);
        if (!cooling.isEmpty()) {
            words.add(Words.say("checklist.cooling", String.join(", ", cooling)));
        }
        words.add(Words.say("checklist.count-spoiled"));
        words.add(Words.say(
                "checklist.count-blanks",
                String.join(
                        ", ",
                        day.loads().stream()
                                .flatMap(load -> load.units().stream())
                                .map(unit -> unit.matched().blank().sku())
                                .collect(Collectors.toCollection(TreeSet::new)))));
        return words;
    }

    /** The loads that rest on when the last one comes out, and until when. */
    private static List<String> cooling(PressDay day, Shop shop) {
        List<String> cooling = new ArrayList<>();
        for (Load load : day.loads()) {
            int rest = load.units().stream().mapToInt(EndOfDay::rest).max().orElse(0);
            long cool = (long) load.endSeconds() + rest;
            if (rest > 0 && cool > day.endSeconds()) {
                cooling.add(Words.say("checklist.cool-until", load.number(), Clock.by(shop, cool)));
            }
        }
        return cooling;
    }

    private static int rest(Unit unit) {
        return Rest.seconds(unit.matched().setting().rest()).orElse(0);
    }
}
