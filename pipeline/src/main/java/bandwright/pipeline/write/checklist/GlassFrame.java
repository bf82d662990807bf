package bandwright.pipeline.write.checklist;

import bandwright.pipeline.write.list.Block;
import bandwright.pipeline.write.list.Framed;
import bandwright.pipeline.write.list.Gap;
import bandwright.pipeline.write.list.Stack;
import bandwright.pipeline.write.list.Style;
import bandwright.pipeline.write.list.Text;
import bandwright.rules.words.Words;

/** What is read before the first glass piece. The words are built in: no table of a shop can switch them off. */
final class GlassFrame {
    private GlassFrame() {}

    static Block block() {
        return Framed.of(Stack.of(
                Text.of(Words.say("checklist.glass"), Style.HEADING),
                Gap.mm(1),
                Text.of(Words.say("checklist.glass-clamp"), Style.STRONG),
                Text.of(Words.say("checklist.glass-water"), Style.STRONG),
                Text.of(Words.say("checklist.glass-look"), Style.STRONG)));
    }
}
