package bandwright.pipeline.load;

import bandwright.pipeline.load.Timetable.Slot;
import bandwright.rules.heat.HeatSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gives the loads of a plan their numbers, machines their hours, and each handling its person. */
final class ToDay {
    private static final Comparator<Handling> IN_TIME =
            Comparator.comparingInt(Handling::from).thenComparingInt(Handling::load);

    private final List<Series> series;
    private final int people;
    private final List<Load> loads = new ArrayList<>();
    private final List<Handling> hands = new ArrayList<>();

    private ToDay(List<Series> series, int people) {
        this.series = series;
        this.people = people;
    }

    static PressDay of(List<Series> series, Work work, List<Slot> slots, List<WhatIf> whatIfs) {
        ToDay to = new ToDay(series, work.people());
        slots.stream()
                .sorted(Comparator.comparingLong(Slot::start).thenComparing(slot -> turn(work, slot)))
                .forEach(to::add);
        to.hands.sort(IN_TIME);
        return new PressDay(to.loads, to.machines(), to.persons(), seconds(AtLeast.of(work)), whatIfs);
    }

    private static int turn(Work work, Slot slot) {
        return work.chains().get(slot.chain()).links().get(slot.link()).turn();
    }

    private void add(Slot slot) {
        Series alike = series.get(slot.chain());
        Batch batch = alike.batches().get(slot.link());
        int number = loads.size() + 1;
        loads.add(new Load(
                number,
                alike.source(),
                slot.machine() + 1,
                batch.units().get(0).matched().setting(),
                seconds(slot.start()),
                seconds(slot.end()),
                batch.units(),
                batch.isFirst()));
        List<Span> spans = alike.hands();
        for (int i = 0; i < spans.size(); i++) {
            if (!spans.get(i).isEmpty()) {
                Handling.Kind last = i == spans.size() - 1 ? Handling.Kind.UNLOAD : Handling.Kind.TURN;
                hands.add(new Handling(
                        0,
                        i == 0 ? Handling.Kind.LOAD : last,
                        number,
                        seconds(slot.start() + spans.get(i).from()),
                        seconds(slot.start() + spans.get(i).to())));
            }
        }
    }

    /** Whoever is free and has the lowest number does it; as never more are needed than there are, somebody is. */
    private List<Handling> persons() {
        int[] free = new int[people];
        List<Handling> done = new ArrayList<>();
        for (Handling next : hands) {
            int person = 0;
            while (person < people - 1 && free[person] > next.from()) {
                person++;
            }
            free[person] = next.to();
            done.add(new Handling(person + 1, next.kind(), next.load(), next.from(), next.to()));
        }
        return done;
    }

    private List<MachineDay> machines() {
        Map<List<Object>, MachineDay> machines = new LinkedHashMap<>();
        for (Load load : loads) {
            HeatSource source = load.source();
            int on = Math.max(0, load.startSeconds() - source.warmUpSeconds());
            machines.merge(
                    Arrays.asList(source, load.machine()),
                    new MachineDay(source, load.machine(), on, load.endSeconds()),
                    (day, more) -> new MachineDay(source, day.machine(), day.on(), Math.max(day.off(), more.off())));
        }
        return machines.values().stream()
                .sorted(Comparator.comparing((MachineDay day) -> day.source().id())
                        .thenComparingInt(MachineDay::machine))
                .toList();
    }

    /** A plan of more than 68 years stands still at its end rather than wrap round. */
    private static int seconds(long seconds) {
        return (int) Math.min(Integer.MAX_VALUE, seconds);
    }
}
