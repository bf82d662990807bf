package bandwright.rules;

import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Blanks;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSources;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Place;
import bandwright.rules.table.Row;
import bandwright.rules.table.TableKind;
import bandwright.rules.table.Tables;
import java.util.ArrayList;
import java.util.List;

/**
 * A flat blank fits a flat press or an oven, a round one never a flat press. A blank of the shop's own that lists another
 * kind is a fault; a built-in one loses that source.
 */
final class SourcesOfBlanks {
    private SourcesOfBlanks() {}

    static Blanks fitting(Blanks blanks, HeatSources sources, Tables tables, Faults faults) {
        boolean isStrict = tables.isStrict(TableKind.BLANKS);
        List<Blank> all = new ArrayList<>();
        for (Blank blank : blanks.list()) {
            List<String> wrong = blank.heatSources().stream()
                    .filter(id -> sources.find(id)
                            .filter(source -> !takes(source.kind(), blank))
                            .isPresent())
                    .toList();
            if (isStrict) {
                wrong.forEach(id -> faults.add(place(blank, tables), word(blank), id, blank.sku()));
            }
            all.add(wrong.isEmpty() ? blank : blank.withoutSources(wrong));
        }
        return new Blanks(all);
    }

    private static String word(Blank blank) {
        return blank.form().isFlat() ? "source.not-flat" : "source.not-round";
    }

    private static boolean takes(HeatKind kind, Blank blank) {
        return blank.form().isFlat() ? kind.takesFlat() : kind.takesRound();
    }

    private static Place place(Blank blank, Tables tables) {
        int row = tables.get(TableKind.BLANKS).rows().stream()
                .filter(written -> Names.same(written.cell("sku"), blank.sku()))
                .mapToInt(Row.Written::number)
                .findFirst()
                .orElse(0);
        return new Place(TableKind.BLANKS.file(), row, "heat_sources");
    }
}
