package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.MachineDay;
import bandwright.pipeline.load.PressDay;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.list.Tick;
import bandwright.rules.Rulebook;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.Circuit;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.table.Names;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What holds all day, each once, to be ticked off before the first machine is switched on. */
final class BeforeStart {
    /** Room for a line or two under a heading. */
    static final Length ROOM = Length.mm(14);

    private static final Length TICK = Length.mm(8);

    private BeforeStart() {}

    static void write(Pages pages, PressDay day, List<Series> all, Above above, Rulebook rules) {
        List<String> words = new ArrayList<>();
        for (Series series : all) {
            series.cautions(CautionStep.DAY).stream()
                    .filter(above::isNew)
                    .forEach(caution -> words.add(caution.text()));
        }
        rules.circuits().forEach(circuit -> circuit(circuit, day, words));
        boolean hasGlass = all.stream().anyMatch(series -> series.combination().holdsGlass());
        String stay = Words.say("checklist.cautions-stay");
        words.add(hasGlass ? stay + " " + Words.say("checklist.glass-stays") : stay);
        pages.together(
                Text.of(Words.say("checklist.before"), Style.HEADING),
                Gap.mm(1.5),
                Text.of(Words.say("checklist.listing-wins"), Style.STRONG),
                Gap.mm(2));
        words.forEach(line -> pages.add(ticked(pages, line)));
        pages.add(Gap.mm(7));
    }

    /** The machines that this day uses on that circuit, against what the circuit carries continuously. */
    private static void circuit(Circuit circuit, PressDay day, List<String> words) {
        Map<HeatSource, Integer> on = new LinkedHashMap<>();
        day.machines().stream()
                .map(MachineDay::source)
                .filter(source -> Names.same(source.circuit(), circuit.id()) && source.watts() > 0)
                .forEach(source -> on.merge(source, 1, Integer::sum));
        if (on.isEmpty()) {
            return;
        }
        long watts = on.entrySet().stream()
                .mapToLong(used -> (long) used.getKey().watts() * used.getValue())
                .sum();
        String names = on.entrySet().stream()
                .map(used -> used.getValue() > 1
                        ? Words.say(
                                "checklist.several",
                                used.getValue(),
                                used.getKey().name())
                        : used.getKey().name())
                .collect(Collectors.joining(" + "));
        String key = watts <= circuit.mostWatts() ? "checklist.circuit" : "checklist.circuit-over";
        words.add(Words.say(key, circuit.id(), names, watts, circuit.mostWatts()));
        on.keySet().stream()
                .filter(source -> source.watts() > circuit.mostWatts())
                .forEach(source -> words.add(Words.say(
                        "checklist.circuit-alone", circuit.id(), source.name(), source.watts(), circuit.mostWatts())));
    }

    static Block ticked(Pages pages, String words) {
        return Stack.of(
                Row.plain(
                        List.of(TICK, pages.measure().minus(TICK)), List.of(Tick.small(), Text.of(words, Style.BODY))),
                Gap.mm(1.6));
    }
}
