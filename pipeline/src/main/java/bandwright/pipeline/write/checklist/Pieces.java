package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Note;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.SheetPage;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.list.Tick;
import bandwright.rules.Shop;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The pieces of a series, load by load: a box to tick, the unit's id, what it is and which sheet its transfer is on. */
final class Pieces {
    private static final Length TICK = Length.mm(8);
    private static final Length NUMBER = Length.mm(12);
    private static final Length TIME = Length.mm(12);
    private static final Length ID = Length.mm(27);
    private static final Length PLACE = Length.mm(36);
    private static final Length PADDING = Length.mm(0.7);
    private static final Length HAIR = Length.mm(0.15);
    /** An id must stand on one line, or nobody finds it: a longer one has a line of its own. */
    private static final int SHORT_ID = 11;

    private final Pages pages;
    private final Shop shop;
    private final Map<String, SheetPage> places = new HashMap<>();
    private final List<Length> columns;

    Pieces(Pages pages, Shop shop, SheetFiles sheets) {
        this.pages = pages;
        this.shop = shop;
        for (SheetPage page : sheets.pages()) {
            page.sheet().placed().forEach(placed -> places.put(placed.unit().id(), page));
        }
        Length taken = TICK.plus(NUMBER).plus(TIME).plus(PLACE);
        columns = List.of(TICK, NUMBER, TIME, pages.measure().minus(taken), PLACE);
    }

    void write(Series series) {
        pages.table(Row.head(
                columns,
                List.of(
                        Gap.mm(0),
                        label("checklist.head-load"),
                        label("checklist.head-time"),
                        label("checklist.head-piece"),
                        label("checklist.head-sheet"))));
        for (Load load : series.loads()) {
            Block number = Text.of(Integer.toString(load.number()), Style.HEADING);
            Block time = Text.of(Clock.at(shop, load), Style.BODY);
            for (Unit unit : load.units()) {
                pages.add(
                        new Row(columns, List.of(Tick.small(), number, time, piece(unit), place(unit)), PADDING, HAIR));
                number = Gap.mm(0);
                time = number;
            }
        }
        pages.endTable();
    }

    private static Block label(String key) {
        return Text.of(Words.say(key), Style.LABEL);
    }

    private Block piece(Unit unit) {
        Block id = Text.of(unit.id(), Style.STRONG);
        Block words = words(unit);
        if (unit.id().length() > SHORT_ID) {
            return Stack.of(id, words);
        }
        return Row.plain(List.of(ID, columns.get(3).minus(ID).minus(Length.mm(3))), List.of(id, words));
    }

    private static Block words(Unit unit) {
        List<String> what = new ArrayList<>(List.of(Words.say(
                "checklist.piece",
                unit.matched().blank().sku(),
                unit.matched().blank().name(),
                unit.matched().design().name())));
        unit.matched().line().texts().forEach((field, text) -> what.add(Words.say("checklist.text", field, text)));
        List<Block> words = new ArrayList<>(List.of(Text.of(String.join("  \u00b7  ", what), Style.BODY)));
        for (Note note : unit.notes()) {
            if (!note.code().equals("not-confirmed")) {
                words.add(Text.of(note.message(), Style.SMALL));
            }
        }
        return new Stack(words);
    }

    private Block place(Unit unit) {
        String words = Optional.ofNullable(places.get(unit.id()))
                .map(page -> Words.say(
                        "checklist.sheet", page.file().substring(page.file().lastIndexOf('/') + 1), page.page()))
                .orElse("");
        return Text.of(words, Style.BODY);
    }
}
