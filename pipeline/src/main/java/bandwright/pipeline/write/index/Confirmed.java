package bandwright.pipeline.write.index;

import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.HeatText;
import bandwright.pipeline.write.WhoseFigures;
import bandwright.rules.Shop;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.words.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which press settings are the blanks' own, and whether they were measured or are the supplier's. */
record Confirmed(List<Unit> units, Shop shop) implements Section {
    private record Line(String blank, String source, PressSetting setting) {}

    @Override
    public String name() {
        return "confirmed";
    }

    @Override
    public boolean isEmpty() {
        return lines().isEmpty();
    }

    private Map<Line, Integer> lines() {
        Map<Line, Integer> lines = new LinkedHashMap<>();
        for (Unit unit : units) {
            MatchedLine matched = unit.matched();
            if (matched.setting().isConfirmed()) {
                String blank = Words.say(
                        "index.blank-name",
                        matched.blank().sku(),
                        matched.blank().name());
                lines.merge(new Line(blank, matched.source().name(), matched.setting()), 1, Integer::sum);
            }
        }
        return lines;
    }

    @Override
    public void writeTo(Html html) {
        Table table = Table.open(
                html, "index.confirmed", "index.blank", "index.source", "index.setting", "index.whose", "index.number");
        lines().forEach((line, count) -> table.row(
                line.blank(),
                line.source(),
                Words.say(
                        "checklist.heat",
                        HeatText.of(line.setting(), shop),
                        HeatText.time(line.setting().timeSeconds()),
                        line.setting().pressure()),
                WhoseFigures.of(line.setting()),
                Integer.toString(count)));
        table.close();
    }
}
