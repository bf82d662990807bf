package bandwright.pipeline.docs;

import static bandwright.pipeline.docs.Doc.say;

import bandwright.rules.blanks.Backing;
import bandwright.rules.blanks.Finish;
import bandwright.rules.blanks.Material;
import bandwright.rules.blanks.Outline;
import bandwright.rules.designs.Align;
import bandwright.rules.designs.Anchor;
import bandwright.rules.designs.Fit;
import bandwright.rules.designs.LetterCase;
import bandwright.rules.designs.Placement;
import bandwright.rules.designs.Side;
import bandwright.rules.heat.Allowed;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.orders.DateOrder;
import bandwright.rules.orders.OrderField;
import bandwright.rules.paper.ColourBy;
import bandwright.rules.paper.Intent;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.table.Evidence;
import bandwright.rules.table.TableKind;
import bandwright.rules.table.Word;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** docs/rulebook.md: every table, every column, every key of shop.csv. */
final class RulebookPage {
    private static final Map<String, Word[]> WORDS = Map.ofEntries(
            Map.entry("blanks.material", Material.values()),
            Map.entry("blanks.outline", Outline.values()),
            Map.entry("blanks.finish", Finish.values()),
            Map.entry("blanks.backing", Backing.values()),
            Map.entry("heat-sources.kind", HeatKind.values()),
            Map.entry("heat-sources.covering", Covering.values()),
            Map.entry("press-settings.material", Material.values()),
            Map.entry("press-settings.heat_kind", HeatKind.values()),
            Map.entry("press-settings.allowed", Allowed.values()),
            Map.entry("printers.mirror", MirrorBy.values()),
            Map.entry("printers.colour", ColourBy.values()),
            Map.entry("printers.intent", Intent.values()),
            Map.entry("designs.placement", Placement.values()),
            Map.entry("designs.fit", Fit.values()),
            Map.entry("texts.side", Side.values()),
            Map.entry("texts.anchor", Anchor.values()),
            Map.entry("texts.align", Align.values()),
            Map.entry("texts.letter_case", LetterCase.values()),
            Map.entry("sites.date_order", DateOrder.values()),
            Map.entry("cautions.step", CautionStep.values()));

    private RulebookPage() {}

    static String text() {
        Doc page = new Doc()
                .heading(1, say("rulebook.title"))
                .paragraph(say("rulebook.made"))
                .paragraph(say("rulebook.how"))
                .paragraph(say("rulebook.lengths"))
                .paragraph(say("rulebook.faults"));
        for (TableKind kind : TableKind.values()) {
            page.heading(2, kind.file())
                    .paragraph(say("table." + name(kind)) + " "
                            + say(kind.mayBeEmpty() ? "empty-table" : "needed-table") + " "
                            + say("built-in", kind.file()))
                    .table(
                            say("columns"),
                            kind.columns().stream()
                                    .map(column -> List.of("`" + column + "`", column(name(kind), column)))
                                    .toList());
            if (kind == TableKind.SHOP) {
                page.table(say("keys"), ShopValues.read().rows());
            }
        }
        return page.text();
    }

    /** The table's name in the keys of words.properties: press-settings. */
    static String name(TableKind kind) {
        return kind.file().replace(".csv", "");
    }

    private static String column(String table, String column) {
        if (column.equals("note")) {
            return say("column.note");
        }
        if (column.equals("evidence")) {
            return say("column.evidence") + words(Evidence.values());
        }
        String key = "column." + table + "." + column;
        String sentence = say(key, fields());
        Word[] words = WORDS.get(table + "." + column);
        return sentence + (words == null ? "" : words(words));
    }

    private static String words(Word[] words) {
        return " "
                + say(
                        "words",
                        Arrays.stream(words)
                                .map(word -> "`" + word.word() + "`")
                                .collect(Collectors.joining(", ")));
    }

    /** The closed list of an order's fields, by the constants that stand for them. */
    private static String fields() {
        return Arrays.stream(OrderField.class.getFields())
                .filter(constant -> constant.getType() == OrderField.class)
                .map(constant -> "`" + constant.getName().toLowerCase(java.util.Locale.ROOT) + "`")
                .collect(Collectors.joining(", "));
    }
}
