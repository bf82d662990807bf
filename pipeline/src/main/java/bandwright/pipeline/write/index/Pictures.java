package bandwright.pipeline.write.index;

import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.write.thumb.Thumbnail;
import bandwright.pipeline.write.thumb.Thumbnails;
import bandwright.rules.Shop;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The page's pictures: each stands in it once, in millimetres, and is shown from there as often as needed. */
final class Pictures {
    private final Thumbnails thumbnails;
    private final FlagLaw law;

    Pictures(Thumbnails thumbnails, Shop shop) {
        this.thumbnails = thumbnails;
        this.law = FlagLaw.of(shop);
    }

    /** All pictures of these units, on paper and on their blanks, not shown here. */
    void store(Html html, List<Unit> units) {
        Set<Integer> stored = new HashSet<>();
        html.open("svg", "class", "store", "aria-hidden", "true", "width", "0", "height", "0")
                .open("defs");
        for (Unit unit : units) {
            for (Thumbnail thumbnail : List.of(thumbnails.get(unit.transfer()), thumbnails.onBlank(unit))) {
                if (stored.add(thumbnail.number())) {
                    store(html, unit.transfer(), thumbnail);
                }
            }
        }
        html.close("defs").close("svg");
    }

    private void store(Html html, Transfer transfer, Thumbnail thumbnail) {
        html.open(
                "image",
                "id",
                id(thumbnail),
                "width",
                mm(transfer.width()),
                "height",
                mm(transfer.height()),
                "preserveAspectRatio",
                "none",
                "href",
                thumbnail.dataUri());
        html.close("image");
    }

    /** What is printed of a unit, as it will look on its blank. */
    void piece(Html html, Unit unit, String words) {
        svg(html, unit.transfer().flat(), words);
        html.open("use", "href", "#" + id(thumbnails.onBlank(unit)))
                .close("use")
                .close("svg");
    }

    /** A sheet as it comes out of the printer: pictures flipped left-right, then turned. */
    void sheet(Html html, Sheet sheet, String words) {
        Box paper = sheet.room().page();
        svg(html, paper, words);
        for (Placed placed : sheet.placed()) {
            placed.flag().ifPresent(flag -> flag(html, paper, flag, placed));
            html.open("g", "transform", asPrinted(paper, placed));
            picture(html, placed.unit().transfer());
            html.close("g");
        }
        html.close("svg");
    }

    private void picture(Html html, Transfer transfer) {
        String href = "#" + id(thumbnails.get(transfer));
        if (transfer.sector().isPresent()) {
            BentPictures.write(html, transfer, transfer.sector().get(), href);
        } else {
            html.open("use", "href", href).close("use");
        }
    }

    private static void svg(Html html, Box box, String words) {
        String view = "0 0 " + mm(box.width()) + " " + mm(box.height());
        html.open("svg", "viewBox", view, "role", "img", "aria-label", words);
    }

    /** SVG counts downwards from the paper's upper edge and turns clockwise; the last step named is done first. */
    private static String asPrinted(Box paper, Placed placed) {
        Box upright = placed.unit().transfer().box();
        return "translate(" + mm(middleX(placed.box())) + " " + mm(middleY(paper, placed.box())) + ") rotate("
                + -placed.rotation().degrees() + ") scale(-1 1) translate("
                + mm(upright.width().half().negated()) + " "
                + mm(upright.height().half().negated()) + ")";
    }

    private void flag(Html html, Box paper, Box flag, Placed placed) {
        if (placed.sector().isPresent()) {
            BentPictures.flag(html, paper, placed.sector().get(), law);
        } else {
            String top = mm(paper.height().minus(flag.top()));
            html.open("rect", "x", mm(flag.x()), "y", top, "width", mm(flag.width()), "height", mm(flag.height()));
            html.close("rect");
        }
        html.line("text", Integer.toString(placed.load()), "x", mm(middleX(flag)), "y", mm(middleY(paper, flag)));
    }

    private static Length middleX(Box box) {
        return box.x().plus(box.width().half());
    }

    private static Length middleY(Box paper, Box box) {
        return paper.height().minus(box.y()).minus(box.height().half());
    }

    private static String id(Thumbnail thumbnail) {
        return "picture-" + thumbnail.number();
    }

    private static String mm(Length length) {
        return length.mm2().toString();
    }
}
