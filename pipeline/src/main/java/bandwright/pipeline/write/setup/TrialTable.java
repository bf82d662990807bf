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
import bandwright.rules.heat.Tries;
import bandwright.rules.heat.Try;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;

/** The page at the press: every try in the order in which the machine waits least, with room to write what came out. */
final class TrialTable {
    private static final double NUMBER = 13;
    private static final double HEAT = 46;
    private static final double TIME = 24;
    private static final double TICKED = 18;

    private final Trial trial;
    private final Tries tries;
    private final TrialFigures figures;
    private final Pages pages;

    TrialTable(Trial trial, Pages pages) {
        this.trial = trial;
        this.tries = trial.tries();
        this.figures = trial.figures();
        this.pages = pages;
    }

    void write(MeasuredRow row) {
        pages.page("");
        heading(Words.say("trial.press-now", trial.blank().sku(), trial.source().name()));
        strong(trial.whose());
        if (tries.isOne()) {
            line("trial.one");
            warmUp();
            table(tries.first());
            signs();
            if (trial.setting().isConfirmed()) {
                line("trial.one-stands");
            }
            line("trial.one-end");
        } else {
            stages();
        }
        if (!tries.isOne() || !trial.setting().isConfirmed()) {
            found(row);
        }
    }

    private void stages() {
        strong(Words.say(
                tries.variesOnlyTime() ? "trial.times-only" : "trial.stage-1",
                tries.first().size()));
        warmUp();
        table(tries.first());
        line("trial.judge");
        signs();
        if (!tries.second().isEmpty()) {
            pages.add(Gap.mm(3));
            strong(Words.say("trial.stage-2"));
            line("trial.stop");
            which();
            line("trial.set-again");
            table(tries.second());
        }
        line("trial.none");
        if (trial.source().piecesPerLoad() > 1) {
            line("trial.full-load");
        }
    }

    /** Which of the second stage's tries the first stage points to, the one nearest to the usual time first. */
    private void which() {
        int usual = trial.range().usualSeconds();
        List<Try> shorter = new ArrayList<>(
                tries.second().stream().filter(one -> one.seconds() < usual).toList());
        Collections.reverse(shorter);
        which(shorter, "trial.if-run", "trial.if-still-run");
        which(
                tries.second().stream().filter(one -> one.seconds() > usual).toList(),
                "trial.if-pale",
                "trial.if-still-pale");
    }

    private void which(List<Try> nearestFirst, String first, String second) {
        if (!nearestFirst.isEmpty()) {
            line(first, nearestFirst.get(0).number());
        }
        if (nearestFirst.size() > 1) {
            line(second, nearestFirst.get(1).number());
        }
    }

    private void warmUp() {
        int seconds = trial.source().warmUpSeconds();
        if (seconds > 0) {
            line("trial.warm-up", TrialFigures.time(seconds));
        }
        if (tries.largestStep() > 0) {
            OptionalInt wait = figures.heatingSeconds(trial.source(), tries.largestStep());
            if (wait.isPresent()) {
                line("trial.step-wait", TrialFigures.time(wait.getAsInt()));
            } else {
                line("trial.step");
            }
        }
    }

    private void table(List<Try> rows) {
        List<Length> columns = columns();
        pages.add(Gap.mm(1.5));
        pages.table(Row.head(
                columns,
                List.of(
                        label("trial.head-try"),
                        label("trial.head-heat"),
                        label("trial.head-time"),
                        label("trial.head-done"),
                        label("trial.head-little"),
                        label("trial.head-right"),
                        label("trial.head-much"),
                        label("trial.head-seen"))));
        for (Try one : rows) {
            String heat = one.temperature().map(figures::heat).orElseGet(() -> Words.say("trial.best-blank"));
            List<Block> cells = new ArrayList<>(List.of(
                    Text.of(String.valueOf(one.number()), Style.FIGURE),
                    Text.of(heat, Style.STRONG),
                    Text.of(TrialFigures.time(one.seconds()), Style.STRONG)));
            for (int i = 0; i < 4; i++) {
                cells.add(Tick.small());
            }
            cells.add(Gap.mm(7.5));
            pages.add(Row.of(columns, cells));
        }
        pages.endTable().add(Gap.mm(2.5));
    }

    private List<Length> columns() {
        List<Length> columns = new ArrayList<>();
        for (double wide : new double[] {NUMBER, HEAT, TIME, TICKED, TICKED, TICKED, TICKED}) {
            columns.add(Length.mm(wide));
        }
        columns.add(pages.measure().minus(columns.stream().reduce(Length.ZERO, Length::plus)));
        return columns;
    }

    private static Text label(String key) {
        return Text.of(Words.say(key), Style.LABEL);
    }

    private void signs() {
        line("trial.too-little");
        line("trial.too-much");
    }

    /** What was found, by hand, and how every later run is told. */
    private void found(MeasuredRow row) {
        pages.add(Gap.mm(3));
        List<Block> words = new ArrayList<>();
        words.add(Text.of(Words.say("trial.found"), Style.HEADING));
        words.add(Gap.mm(5));
        words.add(Text.of(Words.say("trial.found-blanks"), Style.STRONG));
        words.add(Gap.mm(3));
        words.add(Text.of(where(row), Style.BODY));
        words.add(Gap.mm(1.5));
        words.add(Text.of(row.line(), Style.STRONG));
        words.add(Gap.mm(1.5));
        words.add(Text.of(
                Words.say(
                        "trial.row-figures",
                        MeasuredRow.TEMPERATURE,
                        MeasuredRow.TIME,
                        String.join(", ", row.file().header())),
                Style.SMALL));
        words.add(Gap.mm(1));
        words.add(Text.of(Words.say("trial.keep"), Style.BODY));
        pages.add(Framed.of(new Stack(words)));
    }

    private String where(MeasuredRow row) {
        String file = row.file().own().map(Object::toString).orElseGet(() -> Words.say("trial.built-in"));
        String key = trial.setting().sku().isEmpty() ? "trial.add-row" : "trial.replace-row";
        String where =
                Words.say(key, file, trial.blank().sku(), trial.source().kind().word());
        return row.missing().isEmpty()
                ? where
                : where + " " + Words.say("trial.missing", String.join(", ", row.missing()));
    }

    private void heading(String words) {
        pages.add(Text.of(words, Style.HEADING)).add(Gap.mm(2));
    }

    private void strong(String words) {
        pages.add(Text.of(words, Style.STRONG)).add(Gap.mm(1));
    }

    private void line(String key, Object... about) {
        pages.add(Text.of(Words.say(key, about), Style.BODY)).add(Gap.mm(1));
    }
}
