package bandwright.pipeline.write.checklist;

import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.rules.Shop;
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

    /** Everything that must be read before the first of its pieces. */
    void write(Series series) {
        if (series.combination().holdsGlass() && above.isFirstGlass()) {
            pages.add(GlassFrame.block()).add(Gap.mm(5));
        }
        List<Block> head = new ArrayList<>(head(series));
        head.addAll(Listings.of(series, above));
        OptionalInt known = above.steps(series.combination(), series.first().number());
        if (known.isPresent() && !series.combination().holdsGlass()) {
            head.add(Text.of(Words.say("checklist.steps-above", known.getAsInt()), Style.BODY));
            head.add(Gap.mm(2));
            pages.keep(new Stack(head), Length.mm(20));
            return;
        }
        boolean isAgain = known.isPresent();
        List<Block> steps = new ArrayList<>();
        for (CautionStep step : CautionStep.values()) {
            if (step != CautionStep.DAY) {
                step(series, step, isAgain).ifPresent(steps::add);
            }
        }
        head.add(steps.get(0));
        pages.add(new Stack(head));
        steps.subList(1, steps.size() - 1).forEach(pages::add);
        pages.keep(steps.get(steps.size() - 1), Length.mm(20));
    }

    private List<Block> head(Series series) {
        int first = series.first().number();
        int last = series.loads().get(series.loads().size() - 1).number();
        String loads = first == last ? Words.say("checklist.load", first) : Words.say("checklist.loads", first, last);
        String machine = series.source().machines() > 1
                ? Words.say(
                        "checklist.machine",
                        series.source().name(),
                        series.first().machine())
                : series.source().name();
        Block top = Row.plain(
                List.of(pages.measure().minus(TIME), TIME),
                List.of(
                        Text.of(loads + "  \u00b7  " + machine, Style.TITLE),
                        Text.right(Words.say("checklist.starts", Clock.at(shop, series.first())), Style.HEADING)));
        List<Block> head = new ArrayList<>(
                List.of(top, Gap.mm(1), Text.of(Doing.heat("checklist.heat", series, shop), Style.HEADING)));
        Doing.whose(series).forEach(line -> head.add(Text.of(line, Style.BODY)));
        head.add(Gap.mm(2));
        return head;
    }

    /** The step's cautions, then what is done. In small type where all of it has been read at an earlier load. */
    private Optional<Block> step(Series series, CautionStep step, boolean isAgain) {
        List<Block> words = new ArrayList<>();
        Style known = series.combination().holdsGlass() ? Style.SMALL.bold() : Style.SMALL;
        series.cautions(step).forEach(caution -> {
            boolean isNew = above.isNew(caution);
            words.add(Text.of(Words.say("checklist.caution", caution.text()), isNew ? Style.STRONG : known));
            words.add(Gap.mm(0.6));
        });
        Doing.of(step, series, shop).forEach(doing -> words.add(Text.of(doing, isAgain ? Style.SMALL : Style.BODY)));
        if (words.isEmpty()) {
            return Optional.empty();
        }
        Text name = Text.of(Words.say("checklist.step." + step.word()), Style.LABEL);
        return Optional.of(Stack.of(
                Row.plain(List.of(STEP, pages.measure().minus(STEP)), List.of(name, new Stack(words))), Gap.mm(2)));
    }
}
