package bandwright.pipeline.write.checklist;

import bandwright.pipeline.Run;
import bandwright.pipeline.write.day.DayBars;
import bandwright.pipeline.write.day.DayWords;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.rules.Shop;
import bandwright.rules.words.Words;

/** The day at a glance: when it ends, what would make it shorter, and its bars. */
final class DayPart {
    private DayPart() {}

    static void write(Pages pages, Run run, Shop shop) {
        pages.add(Text.of(Words.say("checklist.day"), Style.HEADING)).add(Gap.mm(1.5));
        for (String words : DayWords.of(run.day(), shop, run.id().date())) {
            pages.add(Text.of(words, Style.BODY)).add(Gap.mm(0.8));
        }
        pages.add(Gap.mm(1.5)).add(new Timeline(DayBars.of(run.day(), shop)));
        pages.add(Text.of(Words.say("checklist.day-legend"), Style.SMALL)).add(Gap.mm(6));
    }
}
