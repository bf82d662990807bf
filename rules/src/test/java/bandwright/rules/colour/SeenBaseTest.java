package bandwright.rules.colour;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.blanks.Backing;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Finish;
import bandwright.rules.colour.SeenBase.When;
import bandwright.rules.sample.SampleBlank;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SeenBaseTest {
    private static final Rgb GREY = new Rgb(120, 120, 126);
    private static final Rgb CREAM = new Rgb(246, 245, 242);

    @Test
    void anOpaqueBlankIsSeenOnItsOwnColour() {
        Blank blank = blank().baseColour(GREY).blank();
        assertThat(SeenBase.of(blank)).containsExactly(new SeenBase(When.ALWAYS, GREY, true, true));
        assertThat(SeenBase.judged(blank).isWhite()).isFalse();
    }

    @Test
    void aColourChangingBlankIsSeenColdAndHotAndJudgedHot() {
        Blank blank = blank().baseColour(GREY)
                .hotColour(CREAM)
                .finish(Finish.COLOUR_CHANGING)
                .blank();
        assertThat(SeenBase.of(blank))
                .containsExactly(new SeenBase(When.COLD, GREY, false, true), new SeenBase(When.HOT, CREAM, true, true));
        assertThat(SeenBase.judged(blank).colour()).isEqualTo(CREAM);
    }

    @Test
    void throughGlassOneSeesWhatStandsBehindAndThenADarkDrink() {
        Blank blank = blank().baseColour(CREAM)
                .backing(Backing.CLEAR)
                .finish(Finish.FROSTED)
                .blank();
        List<SeenBase> bases = SeenBase.of(blank);
        assertThat(bases).extracting(SeenBase::when).containsExactly(When.EMPTY, When.FILLED);
        assertThat(SeenBase.judged(blank)).isEqualTo(bases.get(0));
        assertThat(bases.get(0).colour()).isEqualTo(CREAM);
        Rgb filled = bases.get(1).colour();
        assertThat(Contrast.luminance(filled)).isLessThan(0.1);
        assertThat(bases).noneMatch(SeenBase::isSure);
    }

    @ParameterizedTest
    @EnumSource(
            value = Finish.class,
            names = {"GLITTER", "METALLIC", "FROSTED"})
    void aFinishOfManyColoursIsLessSure(Finish finish) {
        assertThat(SeenBase.judged(blank().finish(finish).blank()).isSure()).isFalse();
    }

    private static SampleBlank blank() {
        return SampleBlank.cylinder(Length.mm(260), Length.mm(95));
    }
}
