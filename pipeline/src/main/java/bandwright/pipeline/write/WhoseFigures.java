package bandwright.pipeline.write;

import bandwright.rules.heat.PressSetting;
import bandwright.rules.table.Evidence;
import bandwright.rules.words.Words;

/** Where the temperature and time of a confirmed setting are from, in words: "measured in this shop". */
public final class WhoseFigures {
    private WhoseFigures() {}

    /** Nothing where they are general ones: those are called NOT CONFIRMED instead. */
    public static String of(PressSetting setting) {
        if (!setting.isConfirmed()) {
            return "";
        }
        return Words.say(setting.evidence() == Evidence.MEASURED ? "setting.measured" : "setting.listed");
    }
}
