package bandwright.pipeline.match.text;

import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.match.text.Fields.Field;
import bandwright.rules.Rulebook;
import bandwright.rules.table.Names;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * What is to be written on each piece of a row: its words are read, dealt out and checked. {@code Name: Ada, Ben} for two
 * mugs is "Ada" on the first and "Ben" on the second; one name is for both, three are held for a question to the buyer.
 */
public final class TextReading {
    private final Rulebook rules;
    private final Map<String, Fields> byDesign = new HashMap<>();
    private final Map<LabelsOf, Labels> labels = new HashMap<>();

    private record LabelsOf(String site, List<String> fields) {}

    public TextReading(Rulebook rules) {
        this.rules = rules;
    }

    /** The texts of each thing that the row orders, copy by copy, in the order of its items. */
    public Outcome<List<SortedMap<String, String>>> deal(OrderLine line) {
        List<Fields> ofItems = line.items().stream().map(this::fields).toList();
        Fields all = all(ofItems);
        List<String> names = all.list().stream().map(Field::name).toList();
        Labels known = labels.computeIfAbsent(
                new LabelsOf(line.site(), names), key -> new Labels(rules, key.site(), key.fields()));
        Given given = new Given(line.wording(), all, known);
        return new Dealing(line, ofItems, all, given).deal();
    }

    private Fields fields(Item item) {
        return item.isDrinkware()
                ? byDesign.computeIfAbsent(Names.fold(item.design()), any -> Fields.of(item.design(), rules.texts()))
                : Fields.NONE;
    }

    /** The fields of all of them; of two of one name the first says what they are called. */
    private static Fields all(List<Fields> ofItems) {
        Map<String, Field> all = new LinkedHashMap<>();
        List<String> designs = new ArrayList<>();
        for (Fields fields : ofItems) {
            fields.byName().forEach(all::putIfAbsent);
            if (!fields.design().isEmpty() && !designs.contains(fields.design())) {
                designs.add(fields.design());
            }
        }
        return new Fields(String.join(", ", designs), all);
    }
}
