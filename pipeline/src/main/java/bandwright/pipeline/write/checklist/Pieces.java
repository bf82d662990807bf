package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Note;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.SheetPage;
import bandwright.pipeline.write.day.Clock;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Picture;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.list.Tick;
import bandwright.pipeline.write.thumb.Thumbnails;
import bandwright.rules.Shop;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The pieces of a series, load by load: a box to tick, the unit's id, what it is and which sheet its transfer is on. */
final class Pieces {
    private static final Length TICK = Length.mm(8);
    private static final Length NUMBER = Length.mm(12);
    private static final Length TIME = Length.mm(12);
    private static final Length ID = Length.mm(27);
    private static final Length PICTURE = Length.mm(19);
    private static final Length PICTURE_HIGH = Length.mm(7);
    private static final Length PLACE = Length.mm(40);
    /** The series says what is not confirmed, the pick list what is short. */
    private static final Set<String> SAID_ELSEWHERE = Set.of("not-confirmed", "stock");

    private static final Length PADDING = Length.mm(0.7);
    private static final Length HAIR = Length.mm(0.15);
    /** The number of the piece's column. */
    private static final int PIECE = 4;
    /** An id must stand on one line, or nobody finds it: a longer one has a line of its own. */
    private static final int SHORT_ID = 11;

    private final Pages pages;
    private final Shop shop;
    private final Thumbnails thumbnails;
    private final Map<String, SheetPage> places = new HashMap<>();
    private final List<Length> columns;

    Pieces(Pages pages, Shop shop, SheetFiles sheets, Thumbnails thumbnails) {
        this.pages = pages;
        this.shop = shop;
        this.thumbnails = thumbnails;
        for (SheetPage page : sheets.pages()) {
            page.sheet().placed().forEach(placed -> places.put(placed.unit().id(), page));
        }
        Length taken = TICK.plus(NUMBER).plus(TIME).plus(PICTURE).plus(PLACE);
        columns = List.of(TICK, NUMBER, TIME, PICTURE, pages.measure().minus(taken), PLACE);
    }

    void write(Series series) {
        pages.table(Row.head(
                columns,
                List.of(
                        Gap.mm(0),
                        label("checklist.head-load"),
                        label("checklist.head-time"),
                        Gap.mm(0),
                        label("checklist.head-piece"),
                        label("checklist.head-sheet"))));
        rows(series);
        pages.endTable();
    }

    /** Without the head of the table: it has been read at an earlier load. */
    void rows(Series series) {
        for (Load load : series.loads()) {
            Block number = Text.of(Integer.toString(load.number()), Style.HEADING);
            Block time = Text.of(Clock.hand(shop, load.startSeconds()), Style.BODY);
            if (load.isFirst()) {
                pages.add(Text.of(Words.say("checklist.first", load.number()), Style.STRONG));
            }
            for (Unit unit : load.units()) {
                List<Block> cells = List.of(Tick.small(), number, time, picture(unit), piece(unit), place(unit));
                pages.add(new Row(columns, cells, PADDING, HAIR));
                number = Gap.mm(0);
                time = number;
            }
        }
    }

    private static Block label(String key) {
        return Text.of(Words.say(key), Style.LABEL);
    }

    /** The piece as it will be seen, not as it is printed. */
    private Block picture(Unit unit) {
        return new Picture(thumbnails.onBlank(unit), PICTURE.minus(Length.mm(3)), PICTURE_HIGH);
    }

    private Block piece(Unit unit) {
        Block id = Text.of(unit.id(), Style.STRONG);
        Block words = words(unit);
        if (unit.id().length() > SHORT_ID) {
            return Stack.of(id, words);
        }
        return Row.plain(List.of(ID, columns.get(PIECE).minus(ID).minus(Length.mm(3))), List.of(id, words));
    }

    private static Block words(Unit unit) {
        List<String> what = new ArrayList<>(List.of(Words.say(
                "checklist.piece",
                unit.matched().blank().sku(),
                unit.matched().blank().name(),
                unit.matched().design().name())));
        unit.texts().forEach((field, text) -> what.add(Words.say("checklist.text", field, text)));
        List<Block> words = new ArrayList<>(List.of(Text.of(String.join("  \u00b7  ", what), Style.BODY)));
        for (Note note : unit.notes()) {
            if (!SAID_ELSEWHERE.contains(note.code())) {
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
