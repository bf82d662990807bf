package bandwright.pipeline.load;

import bandwright.pipeline.size.Unit;
import bandwright.rules.Rulebook;
import bandwright.rules.day.Break;
import bandwright.rules.heat.Circuit;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Replays a plan second by second against all that a shop has only so much of, and looks through its loads for pieces
 * that overtake others. Knows nothing of how plans are made; what is wrong comes back in words.
 */
final class DayLaws {
    private final PressDay day;
    private final Rulebook rules;
    private final List<String> broken = new ArrayList<>();

    private DayLaws(PressDay day, Rulebook rules) {
        this.day = day;
        this.rules = rules;
    }

    static List<String> broken(PressDay day, List<Unit> units, Rulebook rules) {
        DayLaws laws = new DayLaws(day, rules);
        laws.conservation(units);
        laws.contents();
        laws.numbers();
        laws.cycles();
        laws.hands();
        laws.persons();
        laws.machines();
        laws.circuits();
        laws.breaks();
        laws.overtaking();
        laws.firsts();
        laws.ends();
        return laws.broken;
    }

    private void law(boolean isKept, String words) {
        if (!isKept) {
            broken.add(words);
        }
    }

    private void conservation(List<Unit> units) {
        List<String> planned = day.loads().stream()
                .flatMap(load -> load.units().stream())
                .map(Unit::id)
                .sorted()
                .toList();
        law(planned.equals(units.stream().map(Unit::id).sorted().toList()), "each unit in exactly one load");
    }

    private void contents() {
        for (Load load : day.loads()) {
            int places = load.units().stream().mapToInt(DayLaws::places).sum();
            law(places <= load.source().piecesPerLoad() || load.units().size() == 1, load.number() + " is too full");
            for (Unit unit : load.units()) {
                law(
                        unit.matched().source().equals(load.source())
                                && sameHeat(unit.matched().setting(), load.setting()),
                        load.number() + " holds unlike pieces");
            }
        }
    }

    private void numbers() {
        for (int i = 0; i < day.loads().size(); i++) {
            Load load = day.loads().get(i);
            law(load.number() == i + 1, "numbers");
            law(i == 0 || day.loads().get(i - 1).startSeconds() <= load.startSeconds(), "not in starting order");
        }
    }

    private void cycles() {
        for (Load load : day.loads()) {
            HeatSource source = load.source();
            int cycle = source.loadingSeconds()
                    + source.positions() * load.setting().timeSeconds()
                    + (source.positions() - 1) * source.turnSeconds()
                    + source.unloadingSeconds();
            law(load.endSeconds() - load.startSeconds() == cycle, load.number() + " takes another time");
        }
    }

    /** What a load's source says must be done by hand, and when. */
    private static List<Span> needed(Load load) {
        HeatSource source = load.source();
        List<Span> needed = new ArrayList<>();
        int at = load.startSeconds();
        needed.add(new Span(at, at + source.loadingSeconds()));
        at += source.loadingSeconds() + load.setting().timeSeconds();
        for (int turn = 1; turn < source.positions(); turn++) {
            needed.add(new Span(at, at + source.turnSeconds()));
            at += source.turnSeconds() + load.setting().timeSeconds();
        }
        needed.add(new Span(at, at + source.unloadingSeconds()));
        needed.removeIf(Span::isEmpty);
        return needed;
    }

    private void hands() {
        for (Load load : day.loads()) {
            List<Span> done = day.hands().stream()
                    .filter(handling -> handling.load() == load.number())
                    .map(handling -> new Span(handling.from(), handling.to()))
                    .sorted(Comparator.comparingLong(Span::from))
                    .toList();
            law(done.equals(needed(load)), load.number() + " isn't loaded, turned and unloaded in its time");
        }
        int[] busy = seconds();
        day.loads().forEach(load -> needed(load).forEach(span -> add(busy, span, 1)));
        law(most(busy) <= rules.shop().people(), "more hands than people");
    }

    private void persons() {
        Map<Integer, List<Handling>> each = groups(day.hands(), Handling::person);
        each.forEach((person, handlings) -> {
            law(person >= 1 && person <= rules.shop().people(), "nobody has the number " + person);
            int[] busy = seconds();
            handlings.forEach(one -> add(busy, new Span(one.from(), one.to()), 1));
            law(most(busy) <= 1, "person " + person + " does two things at a time");
        });
    }

    private void machines() {
        Map<List<Object>, List<Load>> each = groups(day.loads(), load -> List.of(load.source(), load.machine()));
        law(each.size() == day.machines().size(), "hours of machines that aren't used, or none of one that is");
        each.forEach((machine, loads) -> {
            Load first = loads.get(0);
            law(first.machine() >= 1 && first.machine() <= first.source().machines(), "no such machine " + machine);
            for (int i = 1; i < loads.size(); i++) {
                int free = loads.get(i - 1).endSeconds() + change(loads.get(i - 1), loads.get(i));
                law(
                        loads.get(i).startSeconds() >= free,
                        loads.get(i).number() + " starts on a machine that isn't ready");
            }
            for (MachineDay hours : day.machines()) {
                if (List.<Object>of(hours.source(), hours.machine()).equals(machine)) {
                    law(
                            hours.on() >= 0
                                    && first.startSeconds()
                                            >= hours.on() + first.source().warmUpSeconds(),
                            first.number() + " starts cold");
                    law(hours.off() >= loads.get(loads.size() - 1).endSeconds(), "a machine is off too soon");
                }
            }
        });
    }

    private static int change(Load from, Load to) {
        double rise = celsius(to) - celsius(from);
        double rate = rise > 0
                ? from.source().rates().heating()
                : from.source().rates().cooling();
        return (int) Math.ceil(Math.abs(rise) / rate * 60 - 1e-6);
    }

    private static double celsius(Load load) {
        return load.setting().temperature().orElseThrow().celsius();
    }

    /** One that draws more than its circuit carries may be on, but nothing beside it. */
    private void circuits() {
        for (Circuit circuit : rules.circuits()) {
            int[] watts = seconds();
            int[] on = seconds();
            for (MachineDay hours : day.machines()) {
                if (hours.source().circuit().equals(circuit.id())) {
                    add(watts, new Span(hours.on(), hours.off()), hours.source().watts());
                    add(on, new Span(hours.on(), hours.off()), hours.source().watts() > 0 ? 1 : 0);
                }
            }
            boolean isKept = true;
            for (int second = 0; second < watts.length; second++) {
                isKept &= on[second] <= 1 || watts[second] <= 0.8 * circuit.volts() * circuit.amperes();
            }
            law(isKept, circuit.id() + " carries too much");
        }
    }

    private void breaks() {
        int[] running = seconds();
        day.loads().forEach(load -> add(running, new Span(load.startSeconds(), load.endSeconds()), 1));
        int start = rules.shop().dayStarts().toSecondOfDay();
        for (Break pause : rules.shop().breaks()) {
            for (int second = pause.from().toSecondOfDay(); second < pause.to().toSecondOfDay(); second++) {
                int at = second - start;
                if (at >= 0 && at < running.length && running[at] > 0) {
                    law(false, "a load runs in the break of " + pause.from());
                    break;
                }
            }
        }
    }

    /** Of pieces with the same source, setting and places none with a later ship-by date is in an earlier load. */
    private void overtaking() {
        for (Load early : day.loads()) {
            for (Load late : day.loads().subList(early.number(), day.loads().size())) {
                for (Unit one : early.units()) {
                    for (Unit other : late.units()) {
                        boolean isAlike = early.source().equals(late.source())
                                && sameHeat(
                                        one.matched().setting(), other.matched().setting())
                                && places(one) == places(other);
                        law(!isAlike || !shipBy(one).isAfter(shipBy(other)), one.id() + " overtakes " + other.id());
                    }
                }
            }
        }
    }

    /** Of pieces that nobody has tried here the first one is out, alone, before another of its blank goes in. */
    private void firsts() {
        Map<List<Object>, List<Load>> ofBlank = new LinkedHashMap<>();
        for (Load load : day.loads()) {
            law(!load.isFirst() || load.units().size() == 1, load.number() + " is a first piece, and not alone");
            for (Unit unit : load.units()) {
                PressSetting set = unit.matched().setting();
                ofBlank.computeIfAbsent(
                                List.of(
                                        load.source(),
                                        celsius(load),
                                        set.timeSeconds(),
                                        set.pressure(),
                                        unit.matched().blank().sku()),
                                key -> new ArrayList<>())
                        .add(load);
            }
        }
        ofBlank.forEach((blank, loads) -> {
            boolean isTried = rules.shop().firstAlone() && loads.size() > 1;
            law(loads.get(0).isFirst() == isTried, "a first piece of " + blank);
            for (Load load : loads.subList(1, loads.size())) {
                law(!isTried || load.startSeconds() >= loads.get(0).endSeconds(), load.number() + " before its trial");
            }
        });
    }

    private void ends() {
        law(day.atLeastSeconds() <= day.endSeconds(), "it ends before it can");
        day.whatIfs()
                .forEach(whatIf -> law(whatIf.endSeconds() <= day.endSeconds(), whatIf.what() + " makes it later"));
    }

    private int[] seconds() {
        int last = day.machines().stream().mapToInt(MachineDay::off).max().orElse(0);
        return new int[Math.max(last, day.endSeconds()) + 1];
    }

    private static void add(int[] seconds, Span span, int what) {
        for (int second = (int) Math.max(0, span.from()); second < Math.min(span.to(), seconds.length); second++) {
            seconds[second] += what;
        }
    }

    private static int most(int[] seconds) {
        int most = 0;
        for (int one : seconds) {
            most = Math.max(most, one);
        }
        return most;
    }

    private static <K, T> Map<K, List<T>> groups(List<T> all, Function<T, K> key) {
        return all.stream().collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
    }

    private static boolean sameHeat(PressSetting one, PressSetting other) {
        return one.temperature().equals(other.temperature())
                && one.timeSeconds() == other.timeSeconds()
                && one.pressure().equals(other.pressure());
    }

    private static LocalDate shipBy(Unit unit) {
        return unit.matched().line().shipBy().orElse(LocalDate.MAX);
    }

    /** A large piece takes up several places in an oven, and one elsewhere. */
    private static int places(Unit unit) {
        return unit.matched().source().id().equals("oven")
                ? unit.matched().blank().ovenPlaces()
                : 1;
    }
}
