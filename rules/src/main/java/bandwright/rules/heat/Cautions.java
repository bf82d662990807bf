package bandwright.rules.heat;

import bandwright.rules.blanks.Blank;
import bandwright.rules.table.Names;
import java.util.List;

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
}
