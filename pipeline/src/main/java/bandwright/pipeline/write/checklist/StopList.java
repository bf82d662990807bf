package bandwright.pipeline.write.checklist;

import bandwright.pipeline.owed.Stop;
import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Framed;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Row;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.pipeline.write.list.Tick;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;

/** What was printed and must not go on: it heads the checklist. */
final class StopList {
    private static final Length TICK = Length.mm(8);

    private StopList() {}

    static void write(Pages pages, List<Stop> stops) {
        if (stops.isEmpty()) {
            return;
        }
        List<Block> list = new ArrayList<>();
        list.add(Text.of(Words.say("checklist.stops"), Style.HEADING));
        list.add(Gap.mm(1));
        list.add(Text.of(Words.say("checklist.stops-how"), Style.BODY));
        for (Stop stop : stops) {
            list.add(Gap.mm(2));
            Length rest = pages.measure().minus(TICK).minus(Length.mm(7));
            list.add(Row.plain(List.of(TICK, rest), List.of(Tick.small(), words(stop))));
        }
        pages.add(Framed.of(new Stack(list))).add(Gap.mm(6));
    }

    private static Block words(Stop stop) {
        PastPiece piece = stop.printed();
        return Stack.of(
                Text.of(Words.say("checklist.stop-piece", piece.id(), piece.what()), Style.STRONG),
                Text.of(Words.say("checklist.stop-place", piece.run(), piece.sheet(), piece.load()), Style.BODY),
                Text.of(Words.say("checklist.stop-now", stop.wanted()), Style.BODY));
    }
}
