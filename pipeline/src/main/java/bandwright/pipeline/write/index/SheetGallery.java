package bandwright.pipeline.write.index;

import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.write.SheetPage;
import bandwright.rules.words.Words;

/** Every sheet in small, as it comes out of the printer, with links to its page and to its pieces. */
record SheetGallery(Places places, Pictures pictures) implements Section {
    @Override
    public String name() {
        return "sheets";
    }

    @Override
    public boolean isEmpty() {
        return places.pages().isEmpty();
    }

    @Override
    public void writeTo(Html html) {
        html.line("p", Words.say("index.sheets-how"), "class", "lead").open("ul", "class", "sheets");
        for (SheetPage page : places.pages()) {
            html.open("li", "class", shape(page)).open("a", "href", Places.address(page));
            pictures.sheet(html, page.sheet(), Places.nameOf(page));
            html.close("a")
                    .open("p")
                    .link(Places.address(page), Places.nameOf(page))
                    .close("p");
            html.open("p", "class", "ids");
            for (Placed placed : page.sheet().placed()) {
                html.link("#" + Places.anchor(placed.unit()), placed.unit().id())
                        .text(" ");
            }
            html.close("p").close("li");
        }
        html.close("ul");
    }

    /** A page of a roll is so wide that the numbers on its flags would be lost in a sheet's place. */
    private static String shape(SheetPage page) {
        return page.sheet().room().paper().isRoll() ? "roll" : "sheet";
    }
}
