package bandwright.pipeline.write.index;

import bandwright.rules.words.Words;

/** A table with its heads; the first cell of a row names it. One that is too wide for a phone scrolls, by keys too. */
final class Table {
    private final Html html;

    private Table(Html html) {
        this.html = html;
    }

    /**
     * Begins a table.
     *
     * @param name key of what it is called
     * @param heads keys of the columns' heads
     */
    static Table open(Html html, String name, String... heads) {
        html.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", Words.say(name));
        html.open("table").open("thead").open("tr");
        for (String head : heads) {
            html.line("th", Words.say(head), "scope", "col");
        }
        html.close("tr").close("thead").open("tbody");
        return new Table(html);
    }

    void row(String name, String... cells) {
        html.open("tr").line("th", name, "scope", "row");
        for (String cell : cells) {
            html.line("td", cell);
        }
        html.close("tr");
    }

    void close() {
        html.close("tbody").close("table").close("div");
    }
}
