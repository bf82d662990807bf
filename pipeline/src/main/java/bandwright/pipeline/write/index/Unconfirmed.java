package bandwright.pipeline.write.index;

import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.size.Unit;
import bandwright.rules.words.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which press settings are general ones, as nobody wrote the supplier's figures for that blank yet. */
record Unconfirmed(List<Unit> units) implements Section {
    /** What one line of the table is about. */
    private record Setting(String sku, String blank, String source) {}

    @Override
    public String name() {
        return "unconfirmed";
    }

    @Override
    public boolean isEmpty() {
        return settings().isEmpty();
    }

    private Map<Setting, Integer> settings() {
        Map<Setting, Integer> settings = new LinkedHashMap<>();
        for (Unit unit : units) {
            MatchedLine line = unit.matched();
            if (!line.setting().isConfirmed()) {
                Setting setting = new Setting(
                        line.blank().sku(), line.blank().name(), line.source().name());
                settings.merge(setting, 1, Integer::sum);
            }
        }
        return settings;
    }

    @Override
    public void writeTo(Html html) {
        html.line("p", Words.say("index.unconfirmed-how"), "class", "lead");
        Table table = Table.open(html, "index.unconfirmed", "index.blank", "index.source", "index.number");
        settings()
                .forEach((setting, count) -> table.row(
                        Words.say("index.blank-name", setting.sku(), setting.blank()),
                        setting.source(),
                        Integer.toString(count)));
        table.close();
    }
}
