package bandwright.pipeline.write.checklist;

import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Framed;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.rules.blanks.Blank;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** NOT CONFIRMED: room to write each blank's own figures, once per blank and kind of heat source; later loads point there. */
final class Listings {
    private Listings() {}

    static List<Block> of(Series series, Above above) {
        List<Block> toWrite = new ArrayList<>();
        List<String> written = new ArrayList<>();
        int load = series.first().number();
        for (Blank blank : series.unconfirmed()) {
            OptionalInt at = above.listing(blank, series.source().kind(), load);
            if (at.isEmpty()) {
                toWrite.add(Gap.mm(1.2));
                toWrite.add(Text.of(Words.say("checklist.write-here", blank.sku()), Style.BODY));
            } else {
                written.add(Words.say("checklist.written-at", blank.sku(), at.getAsInt()));
            }
        }
        List<Block> said = new ArrayList<>();
        if (!toWrite.isEmpty()) {
            toWrite.add(0, Text.of(Words.say("checklist.not-confirmed"), Style.STRONG));
            said.add(Framed.of(new Stack(toWrite)));
            said.add(Gap.mm(1.2));
        }
        if (!written.isEmpty()) {
            said.add(Text.of(Words.say("checklist.as-written", String.join(", ", written)), Style.SMALL));
            said.add(Gap.mm(0.8));
        }
        return said;
    }
}
