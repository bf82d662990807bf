package bandwright.pipeline.write.checklist;

import bandwright.pipeline.write.HeatText;
import bandwright.pipeline.write.WhoseFigures;
import bandwright.rules.Shop;
import bandwright.rules.blanks.TapeWay;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** What is done in each step of a series, in words. */
final class Doing {
    private Doing() {}

    static List<String> of(CautionStep step, Series series, Shop shop) {
        return switch (step) {
            case DAY -> List.of();
            case PREPARE -> List.of(prepare(series.combination().parts()));
            case TAPE -> series.combination().ways().stream().map(Doing::tape).toList();
            case LOAD -> load(series);
            case PRESS -> List.of(press(series, shop));
            case PEEL -> said("checklist.peel", series, PressSetting::peel);
            case COOL -> said("checklist.cool", series, PressSetting::rest);
            case PACK -> List.of(Words.say("checklist.pack"));
        };
    }

    /** Temperature in both scales, time and pressure. */
    static String heat(String key, Series series, Shop shop) {
        PressSetting setting = series.setting();
        return Words.say(key, HeatText.of(setting, shop), HeatText.time(setting.timeSeconds()), setting.pressure());
    }

    /** Where confirmed figures are from, and for which blanks. */
    static List<String> whose(Series series) {
        List<String> lines = new ArrayList<>();
        series.said(WhoseFigures::of)
                .forEach((whose, skus) -> lines.add(Words.say("checklist.for", String.join(", ", skus), whose)));
        return lines;
    }

    private static String prepare(Set<String> parts) {
        return parts.isEmpty()
                ? Words.say("checklist.prepare")
                : Words.say("checklist.prepare-parts", String.join(", ", parts));
    }

    private static String tape(TapeWay way) {
        return switch (way) {
            case FLAT -> Words.say("checklist.tape-flat");
            case HANDLE -> Words.say("checklist.tape-handle");
            case ROUND -> Words.say("checklist.tape-round");
        };
    }

    private static List<String> load(Series series) {
        List<String> words = new ArrayList<>();
        if (series.source().covering() != Covering.NONE) {
            words.add(Words.say("checklist.cover", series.source().covering().word()));
        }
        if (series.combination().needsGloves()) {
            words.add(Words.say("checklist.gloves"));
        }
        return words;
    }

    private static String press(Series series, Shop shop) {
        String heat = heat("checklist.press", series, shop);
        int positions = series.source().positions();
        return positions > 1 ? heat + " " + Words.say("checklist.positions", positions) : heat;
    }

    /** Where blanks of one load differ, each says for which it is. */
    private static List<String> said(String key, Series series, Function<PressSetting, String> cell) {
        Map<String, Set<String>> said = series.said(cell);
        List<String> lines = new ArrayList<>();
        said.forEach((words, skus) -> lines.add(
                said.size() == 1
                        ? Words.say(key, words)
                        : Words.say("checklist.for", String.join(", ", skus), Words.say(key, words))));
        return lines;
    }
}
