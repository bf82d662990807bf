package bandwright.pipeline.write.picklist;

import bandwright.pipeline.Run;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.ShareText;
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
import bandwright.rules.blanks.Blank;
import bandwright.rules.spoilage.Spoilage;
import bandwright.rules.stock.StockRule;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/** What to take off which shelf, what is short, and what to order: pick-list.pdf. */
public final class PickList implements Output {
    /** The name in the run's folder. */
    public static final String FILE = "pick-list.pdf";

    private static final Length SHELF = Length.mm(24);
    private static final Length COUNT = Length.mm(20);
    private static final Length TICK = Length.mm(8);

    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        if (run.units().isEmpty()) {
            return List.of();
        }
        return List.of(new OutFile(FILE, out -> write(run, rules, out)));
    }

    private static void write(Run run, Rulebook rules, OutputStream out) throws IOException {
        List<PickLine> lines = PickLine.of(run, rules);
        String title = Words.say("picklist.title");
        try (Pages pages = new Pages(
                run.id(),
                FILE,
                title,
                rules.shop().name(),
                ListPaper.of(rules.shop().unit()))) {
            pages.add(Text.of(title, Style.TITLE)).add(Gap.mm(1.5));
            pages.add(Text.of(total(run, lines), Style.BODY.grey())).add(Gap.mm(5));
            blanks(pages, lines);
            PressPart.add(pages, run.units(), rules.shop().unit());
            if (rules.shop().stock() != StockRule.IGNORE) {
                shortages(pages, lines);
                orders(pages, lines);
            }
            pages.writeTo(out);
        }
    }

    private static String total(Run run, List<PickLine> lines) {
        int pieces = lines.stream().mapToInt(line -> line.need().pieces()).sum();
        int spares = lines.stream().mapToInt(line -> line.need().spares()).sum();
        long orders = run.units().stream()
                .map(unit -> List.of(
                        unit.matched().line().site(), unit.matched().line().order()))
                .distinct()
                .count();
        return Words.say("picklist.total", pieces, orders, spares, pieces + spares, lines.size());
    }

    private static void blanks(Pages pages, List<PickLine> lines) {
        Length name = pages.measure().minus(SHELF).minus(COUNT.times(3)).minus(TICK);
        List<Length> columns = List.of(TICK, SHELF, name, COUNT, COUNT, COUNT);
        pages.table(Row.head(
                columns,
                List.of(
                        label(""),
                        label("picklist.shelf"),
                        label("picklist.blank"),
                        figureLabel("picklist.pieces"),
                        figureLabel("picklist.spare"),
                        figureLabel("picklist.take"))));
        for (PickLine line : lines) {
            pages.add(Row.of(
                    columns,
                    List.of(
                            Tick.small(),
                            Text.of(shelf(line.blank()), Style.FIGURE),
                            name(line),
                            Text.right(Integer.toString(line.need().pieces()), Style.BODY),
                            Text.right(Integer.toString(line.need().spares()), Style.BODY),
                            Text.right(Integer.toString(line.need().take()), Style.FIGURE))));
        }
        pages.endTable().add(Gap.mm(8));
    }

    private static String shelf(Blank blank) {
        return blank.shelf().isEmpty() ? Words.say("picklist.no-shelf") : blank.shelf();
    }

    private static Block name(PickLine line) {
        Blank blank = line.blank();
        List<Block> name = new ArrayList<>();
        name.add(Text.of(blank.sku(), Style.STRONG));
        name.add(Text.of(blank.name(), Style.BODY));
        if (!blank.parts().isEmpty()) {
            name.add(Text.of(Words.say("picklist.parts", String.join(", ", blank.parts())), Style.BODY));
        }
        spares(line).forEach(words -> name.add(Text.of(words, Style.SMALL)));
        return new Stack(name);
    }

    /** Where the spares come from, as soon as the shop's own pieces speak. */
    private static List<String> spares(PickLine line) {
        if (line.lots().stream().noneMatch(lot -> lot.spoilage().isLearnt())) {
            return List.of();
        }
        return line.lots().stream().map(PickList::spares).toList();
    }

    private static String spares(PickLine.SourceLot lot) {
        Spoilage spoilage = lot.spoilage();
        if (!spoilage.isLearnt()) {
            return Words.say("picklist.spares-said", lot.source().name(), ShareText.of(spoilage.rate()));
        }
        return Words.say(
                "picklist.spares-learnt",
                spoilage.spoiled(),
                spoilage.seen(),
                lot.source().name(),
                ShareText.of(spoilage.interval().from()),
                ShareText.of(spoilage.interval().to()));
    }

    private static void shortages(Pages pages, List<PickLine> lines) {
        List<Block> found = new ArrayList<>();
        for (PickLine line : lines) {
            int missing = line.need().shortPieces();
            int spares = line.need().shortSpares();
            if (missing + spares > 0) {
                String key = missing > 0 ? "picklist.short-pieces" : "picklist.short-spares";
                int count = line.need().counted().orElseThrow().count();
                found.add(said(line, Words.say(key, line.need().take(), count, missing, spares)));
            }
        }
        section(pages, "picklist.short", "picklist.none-short", found);
    }

    private static void orders(Pages pages, List<PickLine> lines) {
        List<Block> found = new ArrayList<>();
        for (PickLine line : lines) {
            int packs = line.need().packsToOrder();
            if (packs > 0) {
                int size = Math.max(1, line.need().counted().orElseThrow().packSize());
                int level = line.need().counted().orElseThrow().reorderAt().orElseThrow();
                found.add(said(
                        line,
                        Words.say(
                                "picklist.order",
                                packs,
                                size,
                                packs * size,
                                line.need().left(),
                                level)));
            }
        }
        section(pages, "picklist.reorder", "picklist.none-to-reorder", found);
    }

    private static Block said(PickLine line, String what) {
        return Stack.of(
                Text.of(line.blank().sku() + "  " + line.blank().name(), Style.STRONG),
                Text.of(what, Style.BODY),
                Gap.mm(2));
    }

    private static void section(Pages pages, String heading, String none, List<Block> found) {
        Text head = Text.of(Words.say(heading), Style.HEADING);
        if (found.isEmpty()) {
            pages.together(head, Gap.mm(1.5), Text.of(Words.say(none), Style.BODY), Gap.mm(6));
            return;
        }
        pages.together(head, Gap.mm(2), found.get(0));
        found.subList(1, found.size()).forEach(pages::add);
        pages.add(Gap.mm(4));
    }

    private static Text label(String key) {
        return Text.of(key.isEmpty() ? "" : Words.say(key), Style.LABEL);
    }

    private static Text figureLabel(String key) {
        return Text.right(Words.say(key), Style.LABEL);
    }
}
