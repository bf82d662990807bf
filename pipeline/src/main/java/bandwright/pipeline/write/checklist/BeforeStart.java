package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Load;
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
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What holds all day, each once, to be ticked off before the first machine is switched on. */
final class BeforeStart {
    private static final Length TICK = Length.mm(8);

    private BeforeStart() {}

    static void write(Pages pages, List<Series> all, Above above, Rulebook rules) {
        List<String> words = new ArrayList<>();
        for (Series series : all) {
            series.cautions(CautionStep.DAY).stream()
                    .filter(above::isNew)
                    .forEach(caution -> words.add(caution.text()));
        }
        List<Load> loads =
                all.stream().flatMap(series -> series.loads().stream()).toList();
        rules.circuits().forEach(circuit -> circuit(circuit, loads, words));
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

    /** Every machine that this run uses on that circuit, against what the circuit carries continuously. */
    private static void circuit(Circuit circuit, List<Load> loads, List<String> words) {
        Map<HeatSource, Set<Integer>> on = new LinkedHashMap<>();
        loads.stream()
                .filter(load -> load.source().circuit().equals(circuit.id())
                        && load.source().watts() > 0)
                .forEach(load -> on.computeIfAbsent(load.source(), source -> new TreeSet<>())
                        .add(load.machine()));
        if (on.isEmpty()) {
            return;
        }
        long watts = on.entrySet().stream()
                .mapToLong(
                        used -> (long) used.getKey().watts() * used.getValue().size())
                .sum();
        // Continuous loads count with 125 % against the breaker, hence 80 % of it: NEC 210.19(A)(1), 210.20(A).
        long most = (long) Math.floor(circuit.volts() * circuit.amperes() * 0.8);
        String names = on.entrySet().stream()
                .map(used -> used.getValue().size() > 1
                        ? Words.say(
                                "checklist.several",
                                used.getValue().size(),
                                used.getKey().name())
                        : used.getKey().name())
                .collect(Collectors.joining(" + "));
        String key = watts <= most ? "checklist.circuit" : "checklist.circuit-over";
        words.add(Words.say(key, circuit.id(), names, watts, most));
    }

    private static Block ticked(Pages pages, String words) {
        return Stack.of(
                Row.plain(
                        List.of(TICK, pages.measure().minus(TICK)), List.of(Tick.small(), Text.of(words, Style.BODY))),
                Gap.mm(1.6));
    }
}
