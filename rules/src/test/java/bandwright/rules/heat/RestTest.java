package bandwright.rules.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RestTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            5 to 10 min on a dry rack       | 600
            15 min, dry, out of draughts    | 900
            1 min, lying flat               | 60
            90 s, then 5 min under a weight | 300
            1 h                             | 3600
            10-15 MIN                       | 900
            10 minutes on wood              | 600""")
    void theLongestTimeThatIsNamedCounts(String words, int seconds) {
        assertThat(Rest.seconds(words)).hasValue(seconds);
    }

    @ParameterizedTest
    @CsvSource({"until cold", "''", "overnight", "under 2 weights"})
    void wordsWithoutATimeNameNone(String words) {
        assertThat(Rest.seconds(words)).isEqualTo(OptionalInt.empty());
    }

    @Test
    void aPieceThatIsPeeledHotCanBeLookedAtAtOnceAndAnotherWhenItHasRested() {
        assertThat(Rest.untilPeeled("hot, in one move", "5 to 10 min")).isZero();
        assertThat(Rest.untilPeeled("warm, after the sleeve is cut off", "10 to 15 min"))
                .isEqualTo(900);
        assertThat(Rest.untilPeeled("when hand-warm", "until cold")).isZero();
    }
}
