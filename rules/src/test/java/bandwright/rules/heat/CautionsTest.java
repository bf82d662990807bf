package bandwright.rules.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Finish;
import bandwright.rules.blanks.Material;
import bandwright.rules.heat.Caution.Condition;
import bandwright.rules.heat.Caution.Subject;
import bandwright.rules.sample.SampleBlank;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class CautionsTest {
    private static final Blank FROSTED_STEIN = SampleBlank.cylinder(Length.mm(276), Length.mm(150))
            .of(Material.GLASS)
            .finish(Finish.FROSTED)
            .blank();
    private static final Blank TUMBLER = SampleBlank.cylinder(Length.mm(235), Length.mm(207))
            .of(Material.METAL)
            .parts("Lid", "seal")
            .blank();

    private static Caution when(Condition... conditions) {
        return new Caution(
                "sample", List.of(conditions), CautionStep.PRESS, "Mind the heat.", Evidence.COMMON_PRACTICE);
    }

    @Test
    void aCautionForAllSpeaksAboutEverything() {
        assertThat(Cautions.applies(when(), FROSTED_STEIN, HeatKind.OVEN)).isTrue();
        assertThat(Cautions.applies(when(), TUMBLER, HeatKind.MUG_PRESS)).isTrue();
    }

    @Test
    void eachConditionLooksAtItsOwnSide() {
        Caution glass = when(new Condition(Subject.MATERIAL, "glass"));
        Caution oven = when(new Condition(Subject.KIND, "oven"));
        Caution frosted = when(new Condition(Subject.FINISH, "frosted"));
        Caution lid = when(new Condition(Subject.PART, "lid"));
        assertThat(List.of(glass, frosted))
                .allMatch(caution -> Cautions.applies(caution, FROSTED_STEIN, HeatKind.MUG_PRESS))
                .noneMatch(caution -> Cautions.applies(caution, TUMBLER, HeatKind.MUG_PRESS));
        assertThat(Cautions.applies(oven, TUMBLER, HeatKind.OVEN)).isTrue();
        assertThat(Cautions.applies(oven, TUMBLER, HeatKind.TUMBLER_PRESS)).isFalse();
        assertThat(Cautions.applies(lid, TUMBLER, HeatKind.OVEN)).isTrue();
        assertThat(Cautions.applies(lid, FROSTED_STEIN, HeatKind.OVEN)).isFalse();
    }

    @Test
    void conditionsThatAreJoinedMustAllHold() {
        Caution hotGlass = when(new Condition(Subject.MATERIAL, "glass"), new Condition(Subject.KIND, "oven"));
        assertThat(Cautions.applies(hotGlass, FROSTED_STEIN, HeatKind.OVEN)).isTrue();
        assertThat(Cautions.applies(hotGlass, FROSTED_STEIN, HeatKind.MUG_PRESS))
                .isFalse();
        assertThat(Cautions.applies(hotGlass, TUMBLER, HeatKind.OVEN)).isFalse();
    }
}
