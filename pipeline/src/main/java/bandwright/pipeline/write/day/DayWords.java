package bandwright.pipeline.write.day;

import bandwright.pipeline.load.Handling;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.load.PressDay;
import bandwright.pipeline.load.WhatIf;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.size.Urgency;
import bandwright.rules.Shop;
import bandwright.rules.heat.Rest;
import bandwright.rules.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A day's plan in sentences: until when what is pressed, whether it ships today, and what would change that. */
public final class DayWords {
    /** A change that gains less isn't worth a sentence; our judgement. */
    private static final int WORTH_SAYING = 300;

    /** The dates that are told one by one; the rest is in the last. */
    private static final int MOST_DATES = 3;

    private final PressDay day;
    private final Shop shop;
    private final LocalDate today;

    private DayWords(PressDay day, Shop shop, LocalDate today) {
        this.day = day;
        this.shop = shop;
        this.today = today;
    }

    /** The sentences of a day that has loads. */
    public static List<String> of(PressDay day, Shop shop, LocalDate today) {
        DayWords words = new DayWords(day, shop, today);
        List<String> said = new ArrayList<>(words.dates());
        said.addAll(words.collection());
        said.add(words.hands());
        said.addAll(words.better());
        return said;
    }

    /** When pieces are out and cool, date by date. */
    private record Out(long pressed, long handled) {
        private static final Out NEVER = new Out(0, 0);

        private Out and(Out other) {
            return new Out(Math.max(pressed, other.pressed), Math.max(handled, other.handled));
        }
    }

    private List<String> dates() {
        Map<LocalDate, Out> byDate = new TreeMap<>();
        for (Load load : day.loads()) {
            for (Unit unit : load.units()) {
                byDate.merge(Urgency.shipBy(unit), out(load, unit), Out::and);
            }
        }
        List<String> said = new ArrayList<>();
        Out all = byDate.values().stream().reduce(Out.NEVER, Out::and);
        Out sofar = Out.NEVER;
        for (Map.Entry<LocalDate, Out> date : byDate.entrySet()) {
            sofar = sofar.and(date.getValue());
            // A date that is done no sooner than all the rest needs no sentence of its own.
            if (said.size() < MOST_DATES && sofar.pressed() < all.pressed()) {
                said.add(Words.say(
                        "day.date", date.getKey(), Clock.by(shop, sofar.pressed()), Clock.by(shop, sofar.handled())));
            }
        }
        said.add(Words.say("day.end", Clock.by(shop, all.pressed()), Clock.by(shop, all.handled())));
        return said;
    }

    private static Out out(Load load, Unit unit) {
        return new Out(load.endSeconds(), handled(load, unit));
    }

    /** When a piece may be handled, as far as its setting says how long it rests. */
    static long handled(Load load, Unit unit) {
        OptionalInt rest = Rest.seconds(unit.matched().setting().rest());
        return load.endSeconds() + (long) rest.orElse(0);
    }

    private List<String> collection() {
        if (shop.collection().isEmpty()) {
            return List.of();
        }
        long fetched = shop.secondsTo(shop.collection().get());
        Set<String> late = new LinkedHashSet<>();
        int due = 0;
        for (Load load : day.loads()) {
            for (Unit unit : load.units()) {
                boolean isDue = !Urgency.shipBy(unit).isAfter(today);
                due += isDue ? 1 : 0;
                if (isDue && handled(load, unit) > fetched) {
                    late.add(unit.matched().line().order());
                }
            }
        }
        if (due == 0) {
            return List.of();
        }
        return List.of(
                late.isEmpty()
                        ? Words.say("day.collection", shop.collection().get(), due)
                        : Words.say("day.collection-late", shop.collection().get(), String.join(", ", late)));
    }

    /** How long hands are at it, and when they are free the longest. */
    private String hands() {
        long busy = day.hands().stream().mapToLong(h -> h.to() - h.from()).sum();
        long until = day.hands().stream().mapToLong(Handling::from).min().orElse(0);
        long free = 0;
        long freeFrom = 0;
        for (Handling handling : day.hands()) {
            if (handling.from() - until > free) {
                free = handling.from() - until;
                freeFrom = until;
            }
            until = Math.max(until, handling.to());
        }
        return free == 0
                ? Words.say("day.hands", Clock.lasting(busy))
                : Words.say("day.hands-free", Clock.lasting(busy), Clock.lasting(free), Clock.at(shop, freeFrom));
    }

    private List<String> better() {
        List<String> said = new ArrayList<>();
        said.add(Words.say("day.at-least", Clock.by(shop, day.atLeastSeconds())));
        List<WhatIf> worth = day.whatIfs().stream()
                .filter(whatIf -> day.endSeconds() - whatIf.endSeconds() >= WORTH_SAYING)
                .toList();
        worth.forEach(whatIf -> said.add(Words.say(
                "day.what-if." + whatIf.what().word(),
                whatIf.source().map(source -> source.name()).orElse(""),
                Clock.by(shop, whatIf.endSeconds()),
                Clock.lasting(day.endSeconds() - whatIf.endSeconds()))));
        String others = day.whatIfs().stream()
                .filter(whatIf -> !worth.contains(whatIf) && whatIf.what() != WhatIf.Case.CONFIRMED)
                .map(whatIf -> Words.say(
                        "day.more." + whatIf.what().word(),
                        whatIf.source().map(source -> source.name()).orElse("")))
                .collect(Collectors.joining(", "));
        if (!others.isEmpty()) {
            said.add(Words.say("day.no-gain", others));
        }
        return said;
    }
}
