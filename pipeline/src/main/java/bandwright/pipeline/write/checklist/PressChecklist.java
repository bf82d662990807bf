package bandwright.pipeline.write.checklist;

import bandwright.pipeline.Run;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.day.Clock;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.ListPaper;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.thumb.Thumbnails;
import bandwright.rules.Rulebook;
import bandwright.rules.Shop;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How each piece is pressed without ruining it or burning anybody: press-checklist.pdf. Every caution stands before the
 * step that it guards, and every step before the first piece that it is done to.
 */
public final class PressChecklist implements Output {
    /** The name in the run's folder. */
    public static final String FILE = "press-checklist.pdf";

    private final Thumbnails thumbnails;

    public PressChecklist(Thumbnails thumbnails) {
        this.thumbnails = thumbnails;
    }

    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        if (run.loads().isEmpty() && run.owed().stops().isEmpty()) {
            return List.of();
        }
        return List.of(new OutFile(FILE, out -> write(run, rules, out)));
    }

    private void write(Run run, Rulebook rules, OutputStream out) throws IOException {
        Shop shop = rules.shop();
        String title = Words.say("checklist.title");
        try (Pages pages = new Pages(run.id(), FILE, title, shop.name(), ListPaper.of(shop.unit()))) {
            pages.add(Text.of(title, Style.TITLE)).add(Gap.mm(1.5));
            pages.add(Text.of(total(run), Style.BODY)).add(Gap.mm(5));
            StopList.write(pages, run.owed().stops());
            if (run.loads().isEmpty()) {
                pages.writeTo(out);
                return;
            }
            DayPart.write(pages, run, shop);
            Between between = new Between(run.day(), shop);
            List<Series> all = Series.of(run.loads(), between, rules);
            Above above = new Above();
            BeforeStart.write(pages, run.day(), all, above, rules);
            SeriesPart part = new SeriesPart(pages, shop, above);
            Pieces pieces = new Pieces(pages, shop, SheetFiles.of(run.tiled()), thumbnails);
            for (Series series : all) {
                between(pages, shop, between.takeUntil(series.first().startSeconds()));
                if (part.write(series)) {
                    pieces.rows(series);
                    pages.add(Gap.mm(4));
                } else {
                    pieces.write(series);
                    pages.add(Gap.mm(8));
                }
            }
            between(pages, shop, between.takeUntil(Long.MAX_VALUE));
            EndOfDay.write(pages, run.day(), shop);
            BandsPart.write(pages, run.loads(), shop);
            pages.writeTo(out);
        }
    }

    private static void between(Pages pages, Shop shop, List<Between.Line> lines) {
        for (Between.Line line : lines) {
            pages.add(
                    BeforeStart.ticked(pages, Words.say("checklist.between", Clock.at(shop, line.at()), line.words())));
        }
        if (!lines.isEmpty()) {
            pages.add(Gap.mm(4));
        }
    }

    private static String total(Run run) {
        String machines = run.loads().stream()
                .map(Load::source)
                .distinct()
                .map(source -> source.name())
                .collect(Collectors.joining(", "));
        String sum =
                Words.say("checklist.total", run.units().size(), run.loads().size(), machines);
        return String.join(
                "  \u00b7  ",
                Words.say("list.run", run.id()),
                Words.say("list.date", run.id().date()),
                sum);
    }
}
