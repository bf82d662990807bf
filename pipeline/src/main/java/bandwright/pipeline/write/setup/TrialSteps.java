package bandwright.pipeline.write.setup;

import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Framed;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.list.Tick;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Material;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.Cautions;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.TapeText;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What is read before the first try: what it takes, the cautions of the day, and how every try is pressed. */
final class TrialSteps {
    private static final Length TICK = Length.mm(8);
    private static final Length STEP = Length.mm(22);

    private final Trial trial;
    private final Blank blank;
    private final HeatSource source;
    private final Pages pages;
    private final List<PressSetting> about;

    TrialSteps(Trial trial, Pages pages) {
        this.trial = trial;
        this.blank = trial.blank();
        this.source = trial.source();
        this.pages = pages;
        this.about = trial.rules().pressSettings().about(blank, source.kind());
    }

    void write() {
        pages.add(Text.of(trial.title(), Style.TITLE)).add(Gap.mm(1));
        pages.add(Text.of(Words.say("strip.blank", blank.sku(), blank.name(), source.name()), Style.BODY));
        pages.add(Gap.mm(3)).add(whose()).add(Gap.mm(4));
        pages.add(Text.of(Words.say("trial.takes"), Style.HEADING)).add(Gap.mm(1));
        takes().forEach(line -> pages.add(Text.of(line, Style.BODY)).add(Gap.mm(1)));
        pages.add(Gap.mm(3));
        if (blank.material() == Material.GLASS) {
            pages.add(glass()).add(Gap.mm(4));
        }
        pages.add(Text.of(Words.say("checklist.before"), Style.HEADING)).add(Gap.mm(1.5));
        cautions(CautionStep.DAY).forEach(caution -> pages.add(ticked(caution.text())));
        pages.add(Gap.mm(3))
                .add(Text.of(Words.say("trial.every"), Style.HEADING))
                .add(Gap.mm(1.5));
        step(CautionStep.PREPARE, List.of(prepare()));
        step(CautionStep.TAPE, List.of(tape()));
        step(CautionStep.LOAD, load());
        step(CautionStep.PRESS, press());
        step(CautionStep.PEEL, said("checklist.peel", trial.setting().peel()));
        step(CautionStep.COOL, said("checklist.cool", trial.setting().rest()));
    }

    /** Whose figures these are. */
    private Block whose() {
        return Framed.of(Stack.of(
                Text.of(trial.whose(), Style.STRONG),
                Gap.mm(1),
                Text.of(Words.say("checklist.listing-wins"), Style.STRONG)));
    }

    private List<String> takes() {
        List<String> lines = new ArrayList<>();
        lines.add(trial.figures().rangeWords());
        String key = trial.tries().isOne() ? "trial.one-blank" : "trial.blanks";
        lines.add(Words.say(key, trial.firstBlanks(), trial.mostBlanks()));
        lines.add(Words.say(source.piecesPerLoad() > 1 ? "trial.why-load" : "trial.why"));
        lines.add(Words.say("trial.which-blanks"));
        lines.add(Words.say("trial.pages", trial.transferPages(), trial.paper()));
        return lines;
    }

    private static Block glass() {
        return Framed.of(Stack.of(
                Text.of(Words.say("checklist.glass"), Style.HEADING),
                Text.of(Words.say("checklist.glass-clamp"), Style.STRONG),
                Text.of(Words.say("checklist.glass-water"), Style.STRONG),
                Text.of(Words.say("checklist.glass-look"), Style.STRONG)));
    }

    /** Those that speak about the blank, and those that a row of settings names: cautions add up. */
    private List<Caution> cautions(CautionStep step) {
        Set<String> named =
                about.stream().flatMap(row -> row.cautions().stream()).collect(Collectors.toSet());
        return trial.rules().cautions().list().stream()
                .filter(caution -> caution.step() == step)
                .filter(caution -> named.contains(caution.code()) || Cautions.applies(caution, blank, source.kind()))
                .toList();
    }

    private Block ticked(String words) {
        return Stack.of(
                Row.plain(
                        List.of(TICK, pages.measure().minus(TICK)), List.of(Tick.small(), Text.of(words, Style.BODY))),
                Gap.mm(1.2));
    }

    private void step(CautionStep step, List<String> doing) {
        List<Block> words = new ArrayList<>();
        for (Caution caution : cautions(step)) {
            words.add(Text.of(Words.say("checklist.caution", caution.text()), Style.STRONG));
            words.add(Gap.mm(0.6));
        }
        doing.forEach(line -> words.add(Text.of(line, Style.BODY)));
        Text name = Text.of(Words.say("checklist.step." + step.word()), Style.LABEL);
        pages.add(Stack.of(
                Row.plain(List.of(STEP, pages.measure().minus(STEP)), List.of(name, new Stack(words))), Gap.mm(2)));
    }

    private String prepare() {
        String take = blank.parts().isEmpty()
                ? Words.say("checklist.prepare")
                : Words.say("checklist.prepare-parts", String.join(", ", blank.parts()));
        return take + " " + Words.say("trial.prepare");
    }

    private String tape() {
        SwatchStrip strip = trial.strip();
        if (blank.form().isFlat()) {
            return Words.say("trial.tape-flat");
        }
        Length spare = trial.band().up().minus(Length.mm(strip.height())).half();
        String below = size(blank.topMargin().plus(spare));
        if (strip.copies() == 1) {
            return Words.say(blank.hasHandle() ? "trial.tape-short" : "trial.tape-short-seam", below);
        }
        return Words.say(blank.hasHandle() ? "trial.tape" : "trial.tape-seam", below);
    }

    private String size(Length length) {
        boolean isInch = trial.rules().shop().unit() == LengthUnit.IN;
        String mm = TapeText.of(length, LengthUnit.MM) + " mm";
        return isInch ? mm + " (" + TapeText.of(length, LengthUnit.IN) + " in)" : mm;
    }

    private List<String> load() {
        List<String> words = new ArrayList<>();
        if (source.covering() != Covering.NONE) {
            words.add(Words.say("checklist.cover", source.covering().word()));
        }
        if (about.stream().anyMatch(PressSetting::gloves)) {
            words.add(Words.say("checklist.gloves"));
        }
        words.add(Words.say("trial.load"));
        return words;
    }

    private List<String> press() {
        List<String> words = new ArrayList<>();
        words.add(Words.say("trial.press", trial.setting().pressure()));
        if (source.positions() > 1) {
            words.add(Words.say("trial.positions", source.positions()));
        }
        return words;
    }

    private static List<String> said(String key, String words) {
        return words.isEmpty() ? List.of() : List.of(Words.say(key, words));
    }
}
