package bandwright.rules.heat;

import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Finish;
import bandwright.rules.blanks.Material;
import bandwright.rules.table.Cell;
import bandwright.rules.table.Evidence;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Once;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.table.Word;
import bandwright.rules.units.ShopUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** cautions.csv: what is printed before each step. Cautions add up; none can be switched off. */
public record Cautions(List<Caution> list) {
    public Cautions {
        list = List.copyOf(list);
    }

    /** Whether a caution speaks about that blank in that kind of heat source. */
    public static boolean applies(Caution caution, Blank blank, HeatKind kind) {
        return caution.appliesTo().stream().allMatch(condition -> holds(condition, blank, kind));
    }

    private static boolean holds(Caution.Condition condition, Blank blank, HeatKind kind) {
        return switch (condition.subject()) {
            case MATERIAL -> blank.material().word().equals(condition.value());
            case KIND -> kind.word().equals(condition.value());
            case FINISH -> blank.finish().word().equals(condition.value());
            case PART -> blank.parts().stream().anyMatch(part -> Names.same(part, condition.value()));
        };
    }

    /** Reads cautions.csv. */
    public static Cautions read(Table table, ShopUnits units, Faults faults) {
        Once codes = new Once();
        return new Cautions(table.read(units, faults, row -> caution(row, codes)));
    }

    private static Caution caution(Row row, Once codes) {
        String code = row.cell("code").needed().text();
        codes.take(row, "code", code);
        return new Caution(
                code,
                conditions(row.cell("applies_to").needed()),
                row.cell("step").needed().word(CautionStep.values()).orElse(CautionStep.DAY),
                row.cell("text").needed().text(),
                row.cell("evidence").word(Evidence.values()).orElse(Evidence.FROM_MEMORY));
    }

    /** The tests of a cell like {@code material:glass & kind:oven}; {@code all} is none. */
    private static List<Caution.Condition> conditions(Cell cell) {
        List<Caution.Condition> conditions = new ArrayList<>();
        if (cell.isEmpty() || Names.same(cell.text(), "all")) {
            return conditions;
        }
        for (String part : cell.text().split("&", -1)) {
            String[] test = part.split(":", 2);
            Cell subject = cell.with(test[0].strip());
            if (test.length < 2 || test[1].isBlank()) {
                cell.fault("condition");
                continue;
            }
            subject.oneOf(List.of(Caution.Subject.values()), s -> s.name().toLowerCase(Locale.ROOT))
                    .flatMap(s -> condition(s, cell.with(test[1].strip())))
                    .ifPresent(conditions::add);
        }
        return conditions;
    }

    private static Optional<Caution.Condition> condition(Caution.Subject subject, Cell value) {
        Optional<String> word =
                switch (subject) {
                    case MATERIAL -> value.word(Material.values()).map(Word::word);
                    case KIND -> value.word(HeatKind.values()).map(Word::word);
                    case FINISH -> value.word(Finish.values()).map(Word::word);
                    case PART -> Optional.of(value.text());
                };
        return word.map(w -> new Caution.Condition(subject, w));
    }
}
