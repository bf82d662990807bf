package bandwright.pipeline.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two looks decide. */
final class ReadinessTest {
    private static final Instant NINE = Instant.parse("2026-03-02T09:00:00Z");
    private static final Pace PACE = new Pace(Duration.ofSeconds(5), Duration.ofSeconds(10), Optional.empty());

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "a single look is not enough,                    20, 20, 0, 0,   0,   WHOLE,        GROWING",
        "two looks a moment apart are none,              20, 20, 0, 0,   4,   WHOLE,        GROWING",
        "the same after five seconds is ready,           20, 20, 0, 0,   5,   WHOLE,        READY",
        "larger than before,                             20, 21, 0, 0,   60,  WHOLE,        GROWING",
        "as large but written again,                     20, 20, 0, 1,   60,  WHOLE,        GROWING",
        "without its end it waits,                       20, 20, 0, 0,   599, CUT_SHORT,    NOT_YET",
        "but not for ever,                               20, 20, 0, 0,   600, CUT_SHORT,    REFUSED",
        "an empty one may be filled,                     0,  0,  0, 0,   599, EMPTY,        NOT_YET",
        "nobody hurries who has it open,                 20, 20, 0, 0,   6000, BEING_EDITED, NOT_YET",
        "nor a download that pauses,                     20, 20, 0, 0,   6000, ARRIVING,    NOT_YET",
        "what no waiting helps is refused at once,       20, 20, 0, 0,   5,   OTHER_ENDING, REFUSED",
        "but not while it grows,                         20, 30, 0, 0,   5,   OTHER_ENDING, GROWING",
    })
    void twoLooksDecide(
            String story, long bytes, long later, long time, long laterTime, int seconds, Seen seen, Readiness ready) {
        Look first = new Look(NINE, bytes, time, 1, Seen.ARRIVING, List.of());
        Look last = new Look(NINE.plusSeconds(seconds), later, laterTime, 1, seen, List.of());
        assertThat(Readiness.of(first, last, PACE)).as(story).isEqualTo(ready);
    }
}
