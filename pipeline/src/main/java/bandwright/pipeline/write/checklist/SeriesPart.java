package bandwright.pipeline.write.checklist;

import bandwright.pipeline.write.day.Clock;
import bandwright.pipeline.write.day.DayBars;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.rules.Shop;
import bandwright.rules.blanks.Material;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The head of a series: which loads, on what, how hot, how long; what is not confirmed; where its steps stand. */
final class SeriesPart {
    private static final Length TIME = Length.mm(32);
    private static final Length STEP = Length.mm(22);

    private final Pages pages;
    private final Shop shop;
    private final Above above;

    SeriesPart(Pages pages, Shop shop, Above above) {
        this.pages = pages;
        this.shop = shop;
        this.above = above;
    }

    /** Everything that must be read before the first of its pieces. Returns whether it stands in full further up. */
    boolean write(Series series) {
        if (series.combination().holdsGlass() && above.isFirstGlass()) {
            pages.add(GlassFrame.block()).add(Gap.mm(5));
        }
        OptionalInt known = above.steps(series.combination(), series.first().number());
        if (known.isPresent()) {
            again(series, known.getAsInt());
            return true;
        }
        List<Block> head = new ArrayList<>(head(series));
        head.addAll(Listings.of(series, above));
        List<Block> steps = new ArrayList<>();
        for (CautionStep step : CautionStep.values()) {
            if (step != CautionStep.DAY) {
                step(series, step).ifPresent(steps::add);
            }
        }
        head.add(steps.get(0));
        pages.add(new Stack(head));
        steps.subList(1, steps.size() - 1).forEach(pages::add);
        pages.keep(steps.get(steps.size() - 1), Length.mm(20));
        return false;
    }

    /** A few lines for what is worked on like an earlier load; but what is said of glass is said in full every time. */
    private void again(Series series, int load) {
        List<Block> head = new ArrayList<>(List.of(top(series, Style.HEADING), Gap.mm(0.5)));
        head.add(Text.of(Doing.heat("checklist.heat", series, shop), Style.STRONG));
        head.add(Gap.mm(0.8));
        head.addAll(Listings.of(series, above));
        head.add(Text.of(Words.say("checklist.steps-above", load), Style.SMALL));
        head.add(Gap.mm(0.8));
        series.combination().cautions().stream()
                .filter(caution -> caution.step() != CautionStep.DAY && isOfGlass(series, caution))
                .forEach(caution ->
                        head.add(Text.of(Words.say("checklist.caution", caution.text()), Style.SMALL.bold())));
        pages.keep(new Stack(head), Length.mm(12));
    }

    private static boolean isOfGlass(Series series, Caution caution) {
        boolean isAsked = caution.appliesTo().stream()
                .anyMatch(condition -> condition.subject() == Caution.Subject.MATERIAL
                        && condition.value().equals(Material.GLASS.word()));
        return series.combination().holdsGlass()
                && (isAsked || series.setting().cautions().contains(caution.code()));
    }

    private List<Block> head(Series series) {
        List<Block> head = new ArrayList<>(List.of(
                top(series, Style.TITLE),
                Gap.mm(1),
                Text.of(Doing.heat("checklist.heat", series, shop), Style.HEADING)));
        Doing.whose(series).forEach(line -> head.add(Text.of(line, Style.BODY)));
        head.add(Gap.mm(2));
        return head;
    }

    private Block top(Series series, Style style) {
        int first = series.first().number();
        int last = series.loads().get(series.loads().size() - 1).number();
        String loads = first == last ? Words.say("checklist.load", first) : Words.say("checklist.loads", first, last);
        String machine = DayBars.name(series.source(), series.first().machine());
        return Row.plain(
                List.of(pages.measure().minus(TIME), TIME),
                List.of(
                        Text.of(loads + "  \u00b7  " + machine, style),
                        Text.right(
                                Words.say(
                                        "checklist.starts",
                                        Clock.at(shop, series.first().startSeconds())),
                                Style.HEADING)));
    }

    /** The step's cautions, those that are new here in large type, then what is done. */
    private Optional<Block> step(Series series, CautionStep step) {
        List<Block> words = new ArrayList<>();
        Style known = series.combination().holdsGlass() ? Style.SMALL.bold() : Style.SMALL;
        series.cautions(step).forEach(caution -> {
            boolean isNew = above.isNew(caution);
            words.add(Text.of(Words.say("checklist.caution", caution.text()), isNew ? Style.STRONG : known));
            words.add(Gap.mm(0.6));
        });
        Doing.of(step, series, shop).forEach(doing -> words.add(Text.of(doing, Style.BODY)));
        if (words.isEmpty()) {
            return Optional.empty();
        }
        Text name = Text.of(Words.say("checklist.step." + step.word()), Style.LABEL);
        return Optional.of(Stack.of(
                Row.plain(List.of(STEP, pages.measure().minus(STEP)), List.of(name, new Stack(words))), Gap.mm(2)));
    }
}
