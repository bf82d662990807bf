package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Note;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.SheetPage;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Framed;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.list.Tick;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** One series of loads on the checklist: what it is, then step by step, the cautions before the step they guard. */
final class SeriesPart {
    private static final Length STEP = Length.mm(22);
    private static final Length TICK = Length.mm(8);
    private static final Length LOAD = Length.mm(16);
    private static final Length PLACE = Length.mm(42);

    private final Pages pages;
    private final Series series;
    private final Rulebook rules;
    private final Map<String, SheetPage> places;
    /** Codes of cautions that stand in full further up. */
    private final Set<String> printed;

    SeriesPart(Pages pages, Series series, Rulebook rules, Map<String, SheetPage> places, Set<String> printed) {
        this.pages = pages;
        this.series = series;
        this.rules = rules;
        this.places = places;
        this.printed = printed;
    }

    void write() {
        head();
        step(CautionStep.PREPARE, prepare());
        step(CautionStep.TAPE, tape());
        step(CautionStep.LOAD, load());
        pieces();
        step(CautionStep.PRESS, Optional.of(press()));
        step(CautionStep.PEEL, said("checklist.peel", setting().peel()));
        step(CautionStep.COOL, said("checklist.cool", setting().rest()));
        step(CautionStep.PACK, Optional.of(Words.say("checklist.pack")));
        pages.add(Gap.mm(9));
    }

    private PressSetting setting() {
        return series.first().setting();
    }

    private void head() {
        Length half = pages.measure().half();
        int last = series.loads().get(series.loads().size() - 1).number();
        int first = series.first().number();
        String loads = first == last ? Words.say("checklist.load", first) : Words.say("checklist.loads", first, last);
        String machine = series.source().machines() > 1
                ? Words.say(
                        "checklist.machine",
                        series.source().name(),
                        series.first().machine())
                : series.source().name();
        Block top = Row.plain(
                List.of(half.times(1.3), half.times(0.7)),
                List.of(
                        Text.of(loads + "  \u00b7  " + machine, Style.TITLE),
                        Text.right(
                                Words.say("checklist.starts", Clock.at(rules.shop(), series.first())), Style.HEADING)));
        Block heat = Text.of(
                Words.say(
                        "checklist.heat",
                        Clock.heat(setting(), rules.shop()),
                        Clock.time(setting().timeSeconds()),
                        setting().pressure()),
                Style.HEADING);
        List<Block> head = new ArrayList<>(List.of(top, Gap.mm(2), heat, Gap.mm(2)));
        series.unconfirmed().forEach(blank -> {
            head.add(notConfirmed(blank));
            head.add(Gap.mm(2));
        });
        pages.together(head.toArray(Block[]::new));
    }

    private static Block notConfirmed(Blank blank) {
        return Framed.of(Stack.of(
                Text.of(Words.say("checklist.not-confirmed"), Style.STRONG),
                Text.of(Words.say("checklist.write-here", blank.sku()), Style.BODY)));
    }

    /** The step's cautions, then what is done; on a page together. */
    private void step(CautionStep step, Optional<String> doing) {
        List<Block> words = new ArrayList<>();
        for (Caution caution : series.cautions(step, rules)) {
            if (printed.add(caution.code()) || isOfGlass(caution)) {
                words.add(Text.of(Words.say("checklist.caution", caution.text()), Style.STRONG));
                words.add(Gap.mm(0.8));
            }
        }
        doing.ifPresent(what -> words.add(Text.of(what, Style.BODY)));
        if (words.isEmpty()) {
            return;
        }
        Text name = Text.of(Words.say("checklist.step." + step.word()), Style.LABEL);
        pages.together(
                Row.plain(List.of(STEP, pages.measure().minus(STEP)), List.of(name, new Stack(words))), Gap.mm(2.5));
    }

    /** Glass that breaks ends the working day, so its cautions are never only referred to. */
    private static boolean isOfGlass(Caution caution) {
        return caution.appliesTo().stream()
                .anyMatch(condition -> condition.subject() == Caution.Subject.MATERIAL
                        && condition.value().equals("glass"));
    }

    private Optional<String> prepare() {
        String parts = series.blanks().stream()
                .flatMap(blank -> blank.parts().stream())
                .distinct()
                .collect(Collectors.joining(", "));
        return Optional.of(
                parts.isEmpty() ? Words.say("checklist.prepare") : Words.say("checklist.prepare-parts", parts));
    }

    private Optional<String> tape() {
        List<String> ways = series.blanks().stream()
                .map(SeriesPart::way)
                .distinct()
                .map(Words::say)
                .toList();
        return Optional.of(String.join(" ", ways));
    }

    private static String way(Blank blank) {
        if (blank.form().isFlat()) {
            return "checklist.tape-flat";
        }
        return blank.hasHandle() ? "checklist.tape-handle" : "checklist.tape-round";
    }

    private Optional<String> load() {
        List<String> words = new ArrayList<>();
        if (series.source().covering() != Covering.NONE) {
            words.add(Words.say("checklist.cover", series.source().covering().word()));
        }
        if (series.needsGloves(rules)) {
            words.add(Words.say("checklist.gloves"));
        }
        return words.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", words));
    }

    private String press() {
        String heat = Clock.heat(setting(), rules.shop());
        String time = Clock.time(setting().timeSeconds());
        int positions = series.source().positions();
        return positions > 1
                ? Words.say("checklist.press-positions", heat, time, setting().pressure(), positions)
                : Words.say("checklist.press", heat, time, setting().pressure());
    }

    private static Optional<String> said(String key, String what) {
        return what.isEmpty() ? Optional.empty() : Optional.of(Words.say(key, what));
    }

    private void pieces() {
        Length what = pages.measure().minus(TICK).minus(LOAD).minus(PLACE);
        List<Length> columns = List.of(TICK, LOAD, what, PLACE);
        pages.table(Row.head(
                columns,
                List.of(
                        Text.of("", Style.LABEL),
                        Text.of(Words.say("checklist.head-load"), Style.LABEL),
                        Text.of(Words.say("checklist.head-piece"), Style.LABEL),
                        Text.of(Words.say("checklist.head-sheet"), Style.LABEL))));
        for (Load load : series.loads()) {
            String number = Integer.toString(load.number());
            for (Unit unit : load.units()) {
                pages.add(Row.of(
                        columns, List.of(Tick.small(), Text.of(number, Style.FIGURE), piece(unit), place(unit))));
                number = "";
            }
        }
        pages.endTable().add(Gap.mm(3));
    }

    private static Block piece(Unit unit) {
        List<Block> words = new ArrayList<>();
        words.add(Text.of(unit.id(), Style.STRONG));
        words.add(Text.of(
                Words.say(
                        "checklist.piece",
                        unit.matched().blank().sku(),
                        unit.matched().blank().name(),
                        unit.matched().design().name()),
                Style.BODY));
        for (Note note : unit.notes()) {
            if (!note.code().equals("not-confirmed")) {
                words.add(Text.of(note.message(), Style.SMALL));
            }
        }
        return new Stack(words);
    }

    private Block place(Unit unit) {
        SheetPage page = places.get(unit.id());
        String name = page == null ? "" : page.file().substring(page.file().lastIndexOf('/') + 1);
        return Text.of(page == null ? "" : Words.say("checklist.sheet", name, page.page()), Style.BODY);
    }
}
