package bandwright.pipeline.write.index;

import bandwright.pipeline.Run;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.SheetPage;
import bandwright.rules.words.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where things are found: a unit's sheet and load, and the addresses of this page's parts. */
final class Places {
    private final SheetFiles sheets;
    private final Map<String, SheetPage> pages = new HashMap<>();
    private final Map<String, Integer> loads = new HashMap<>();

    Places(Run run) {
        sheets = SheetFiles.of(run.tiled());
        for (SheetPage page : sheets.pages()) {
            for (Placed placed : page.sheet().placed()) {
                pages.put(placed.unit().id(), page);
                loads.put(placed.unit().id(), placed.load());
            }
        }
    }

    List<SheetFile> files() {
        return sheets.files();
    }

    List<SheetPage> pages() {
        return sheets.pages();
    }

    /** A unit's anchor: its id has no character that an address would change. */
    static String anchor(Unit unit) {
        return "unit-" + unit.id();
    }

    static String anchorOfHeld(int index) {
        return "held-" + (index + 1);
    }

    /** Opens a sheet's file at its page. */
    static String address(SheetPage page) {
        return page.file() + "#page=" + page.page();
    }

    static String nameOf(SheetPage page) {
        String file = page.file().substring(page.file().lastIndexOf('/') + 1);
        return Words.say("index.sheet", file, page.page());
    }

    /** "load 3, letter-01.pdf page 2", with a link to the page. */
    void write(Html html, Unit unit) {
        Integer load = loads.get(unit.id());
        SheetPage page = pages.get(unit.id());
        if (load == null || page == null) {
            throw new IllegalArgumentException(unit.id() + " is on no sheet");
        }
        html.text(Words.say("index.load", load)).text(", ").link(address(page), nameOf(page));
    }
}
