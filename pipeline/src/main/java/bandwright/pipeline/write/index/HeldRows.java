package bandwright.pipeline.write.index;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.rows.From;
import bandwright.rules.words.Words;
import java.util.List;

/** The rows that wait for a person: what is wrong, what to do about it, and where it stands. */
record HeldRows(List<HeldRow> rows, ProofLinks proofs) implements Section {
    @Override
    public String name() {
        return "held";
    }

    @Override
    public boolean isEmpty() {
        return rows.isEmpty();
    }

    @Override
    public void writeTo(Html html) {
        html.line("p", Words.say("index.held-how"), "class", "lead").open("ul", "class", "rows");
        for (int i = 0; i < rows.size(); i++) {
            HeldRow held = rows.get(i);
            html.open("li", "id", Places.anchorOfHeld(i)).line("h3", title(held));
            html.open("div").line("p", held.reason().message());
            html.line("p", held.reason().cure(), "class", "cure");
            proofs.write(html, held.row().from());
            held.ask().ifPresent(question -> ask(html, question));
            html.line("p", place(held), "class", "soft").close("div").close("li");
        }
        html.close("ul");
    }

    private static void ask(Html html, String question) {
        html.line("p", Words.say("index.ask-buyer"), "class", "soft");
        html.line("p", question, "class", "question");
    }

    private static String title(HeldRow held) {
        if (held.order().isEmpty()) {
            return Words.say("index.no-order");
        }
        return held.pieces() == 0 ? held.order() : Words.say("index.order-pieces", held.order(), held.pieces());
    }

    private static String place(HeldRow held) {
        From from = held.row().from();
        String sheet = from.sheet().map(name -> ", " + name).orElse("");
        return Words.say("index.place", from.file() + sheet, from.row(), held.column());
    }
}
