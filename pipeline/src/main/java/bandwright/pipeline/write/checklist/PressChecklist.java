package bandwright.pipeline.write.checklist;

import bandwright.pipeline.Run;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.SheetPage;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.ListPaper;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.list.Tick;
import bandwright.rules.Rulebook;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.Circuit;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** How each piece is pressed without ruining it or burning anybody: press-checklist.pdf. */
public final class PressChecklist implements Output {
    /** The name in the run's folder. */
    public static final String FILE = "press-checklist.pdf";

    private static final Length TICK = Length.mm(8);

    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        if (run.loads().isEmpty()) {
            return List.of();
        }
        return List.of(new OutFile(FILE, out -> write(run, rules, out)));
    }

    private static void write(Run run, Rulebook rules, OutputStream out) throws IOException {
        List<Series> all = Series.of(run.loads());
        Map<String, SheetPage> places = new HashMap<>();
        for (SheetPage page : SheetFiles.of(run.tiled()).pages()) {
            page.sheet().placed().forEach(placed -> places.put(placed.unit().id(), page));
        }
        String title = Words.say("checklist.title");
        try (Pages pages = new Pages(
                run.id(),
                FILE,
                title,
                rules.shop().name(),
                ListPaper.of(rules.shop().unit()))) {
            pages.add(Text.of(title, Style.TITLE)).add(Gap.mm(1.5));
            pages.add(Text.of(total(run), Style.BODY.grey())).add(Gap.mm(5));
            Set<String> printed = new HashSet<>();
            day(pages, all, rules, printed);
            for (Series series : all) {
                new SeriesPart(pages, series, rules, places, printed).write();
            }
            pages.writeTo(out);
        }
    }

    private static String total(Run run) {
        String machines = sources(run.loads()).stream().map(HeatSource::name).collect(Collectors.joining(", "));
        return Words.say("checklist.total", run.units().size(), run.loads().size(), machines);
    }

    private static Set<HeatSource> sources(List<Load> loads) {
        Set<HeatSource> sources = new LinkedHashSet<>();
        loads.forEach(load -> sources.add(load.source()));
        return sources;
    }

    /** What holds all day, each once, to be ticked off before the first machine is switched on. */
    private static void day(Pages pages, List<Series> all, Rulebook rules, Set<String> printed) {
        List<Block> words = new ArrayList<>();
        words.add(ticked(pages, Words.say("checklist.listing-wins")));
        for (Series series : all) {
            for (Caution caution : series.cautions(CautionStep.DAY, rules)) {
                if (printed.add(caution.code())) {
                    words.add(ticked(pages, caution.text()));
                }
            }
        }
        for (Circuit circuit : rules.circuits()) {
            circuit(
                    circuit,
                    sources(all.stream().flatMap(s -> s.loads().stream()).toList()),
                    words,
                    pages);
        }
        words.add(ticked(pages, Words.say("checklist.cautions-stay")));
        pages.together(Text.of(Words.say("checklist.before"), Style.HEADING), Gap.mm(2), words.get(0));
        words.subList(1, words.size()).forEach(pages::add);
        pages.add(Gap.mm(8));
    }

    private static void circuit(Circuit circuit, Set<HeatSource> sources, List<Block> words, Pages pages) {
        List<HeatSource> on = sources.stream()
                .filter(source -> source.circuit().equals(circuit.id()) && source.watts() > 0)
                .toList();
        if (on.isEmpty()) {
            return;
        }
        int watts = on.stream().mapToInt(HeatSource::watts).sum();
        // A load of three hours or more counts as continuous, and 80 % of the breaker as its limit: NEC 210.19(A)(1).
        long most = (long) Math.floor(circuit.volts() * circuit.amperes() * 0.8);
        String key = watts <= most ? "checklist.circuit" : "checklist.circuit-over";
        String names = on.stream().map(HeatSource::name).collect(Collectors.joining(" + "));
        words.add(ticked(pages, Words.say(key, circuit.id(), names, watts, most)));
    }

    private static Block ticked(Pages pages, String words) {
        return Stack.of(
                Row.plain(
                        List.of(TICK, pages.measure().minus(TICK)), List.of(Tick.small(), Text.of(words, Style.BODY))),
                Gap.mm(1.6));
    }
}
