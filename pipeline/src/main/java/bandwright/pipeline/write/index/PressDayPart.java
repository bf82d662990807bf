package bandwright.pipeline.write.index;

import bandwright.pipeline.Run;
import bandwright.pipeline.write.day.DayBars;
import bandwright.pipeline.write.day.DayBars.Bar;
import bandwright.pipeline.write.day.DayWords;
import bandwright.rules.Shop;
import bandwright.rules.words.Words;
import java.util.List;
import java.util.Locale;

/** The day at the machines: until when what is pressed, what would change that, and its bars over a line of time. */
record PressDayPart(Run run, Shop shop) implements Section {
    private static final int WIDE = 960;
    private static final int NAMES = 150;
    private static final int ROW = 26;
    private static final int HEAD = 20;
    private static final int HOUR_WIDE = 52;
    private static final int DIGIT = 7;

    @Override
    public String name() {
        return "day";
    }

    @Override
    public boolean isEmpty() {
        return run.loads().isEmpty();
    }

    @Override
    public void writeTo(Html html) {
        List<String> words = DayWords.of(run.day(), shop, run.id().date());
        html.open("ul", "class", "said");
        words.forEach(line -> html.line("li", line));
        html.close("ul");
        DayBars bars = DayBars.of(run.day(), shop);
        int high = HEAD + ROW * bars.rows().size();
        html.open(
                "svg",
                "class",
                "day",
                "viewBox",
                "0 0 " + WIDE + " " + high,
                "role",
                "img",
                "aria-label",
                String.join(" ", words));
        bars.breaks().forEach(pause -> bar(html, pause, bars, HEAD, high - HEAD));
        hours(html, bars, high);
        for (int row = 0; row < bars.rows().size(); row++) {
            row(html, bars, row);
        }
        html.close("svg").line("p", Words.say("index.day-legend"), "class", "soft");
    }

    private static void hours(Html html, DayBars bars, int high) {
        double free = 0;
        for (DayBars.Hour hour : bars.hours()) {
            double x = x(hour.at(), bars);
            html.open("rect", "class", "hour", "x", Html.number(x), "y", "0", "width", "0.6", "height", "" + high)
                    .close("rect");
            if (x >= free && x + HOUR_WIDE <= WIDE) {
                html.line("text", hour.words(), "x", Html.number(x + 4), "y", "12");
                free = x + HOUR_WIDE;
            }
        }
    }

    private static void row(Html html, DayBars bars, int row) {
        DayBars.Row machine = bars.rows().get(row);
        int top = HEAD + ROW * row;
        html.line("text", machine.name(), "class", "name", "x", "0", "y", "" + (top + ROW / 2 + 4));
        for (Bar bar : machine.bars()) {
            switch (bar.kind()) {
                case HOT -> bar(html, bar, bars, top + ROW / 2 - 1, 2);
                case HANDS -> bar(html, bar, bars, top + 7, ROW - 14);
                case WARM_UP, LOAD, BREAK -> bar(html, bar, bars, top + 4, ROW - 8);
            }
            double wide = x(bar.to(), bars) - x(bar.from(), bars);
            if (bar.kind() == DayBars.Kind.LOAD && wide > DIGIT * bar.words().length() + 5) {
                double middle = x(bar.from(), bars) + wide / 2;
                html.line(
                        "text",
                        bar.words(),
                        "class",
                        "number",
                        "x",
                        Html.number(middle),
                        "y",
                        "" + (top + ROW / 2 + 4));
            }
        }
    }

    private static void bar(Html html, Bar bar, DayBars bars, int top, int high) {
        double from = x(bar.from(), bars);
        String kind = bar.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        html.open(
                        "rect",
                        "class",
                        kind,
                        "x",
                        Html.number(from),
                        "y",
                        "" + top,
                        "width",
                        Html.number(Math.max(0.5, x(bar.to(), bars) - from)),
                        "height",
                        "" + high)
                .close("rect");
    }

    private static double x(long seconds, DayBars bars) {
        double share = (double) (seconds - bars.from()) / (bars.to() - bars.from());
        return NAMES + (WIDE - NAMES) * Math.max(0, Math.min(1, share));
    }
}
