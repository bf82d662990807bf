package bandwright.pipeline.write.index;

import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.write.SheetPage;
import bandwright.rules.units.Box;
import bandwright.rules.words.Words;
import java.util.stream.Collectors;

/** A sheet in small, as it comes out of the printer: its transfers as boxes with their load's number. */
final class SheetDrawing {
    private SheetDrawing() {}

    static void draw(Html html, SheetPage page) {
        Box paper = page.sheet().room().page();
        String ids =
                page.sheet().placed().stream().map(placed -> placed.unit().id()).collect(Collectors.joining(", "));
        html.open(
                "svg",
                "viewBox",
                "0 0 " + paper.width().mm2() + " " + paper.height().mm2(),
                "role",
                "img",
                "aria-label",
                Words.say("index.sheet-holds", ids));
        for (Placed placed : page.sheet().placed()) {
            Box box = placed.box();
            // SVG counts downwards from the upper edge.
            String top = paper.height().minus(box.top()).mm2().toString();
            html.open(
                    "rect",
                    "x",
                    box.x().mm2().toString(),
                    "y",
                    top,
                    "width",
                    box.width().mm2().toString(),
                    "height",
                    box.height().mm2().toString());
            html.close("rect");
            html.line(
                    "text",
                    Integer.toString(placed.load()),
                    "x",
                    box.x().plus(box.width().half()).mm2().toString(),
                    "y",
                    paper.height()
                            .minus(box.y().plus(box.height().half()))
                            .mm2()
                            .toString());
        }
        html.close("svg");
    }
}
