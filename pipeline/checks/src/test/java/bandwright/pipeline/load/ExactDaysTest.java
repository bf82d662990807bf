package bandwright.pipeline.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * Plans of small days against the optimum that a constraint solver proves. When this was written the solver was through
 * with 97 of the 120 days; all 97 plans were the optimum, and on 52 of them our own bound proved it too.
 */
class ExactDaysTest {
    private static final int DAYS = 120;
    private static final int PLACINGS = 60_000;
    /** On so many days the solver is asked even if the plan is as good as our own bound says it can be. */
    private static final int ALWAYS_SOLVED = 30;

    private int proven;
    private int optimal;
    private int boundReached;
    private double worst;

    @Test
    void aSmallDayEndsAsSoonAsItCan() {
        for (long seed = 0; seed < DAYS; seed++) {
            compare(seed);
        }
        assertThat(proven).as("days that the solver is through with").isGreaterThanOrEqualTo(DAYS / 2);
        assertThat(optimal).as("of them planned as short as can be").isGreaterThanOrEqualTo(proven * 95 / 100);
        assertThat(boundReached).as("of them with a bound that says so").isGreaterThanOrEqualTo(proven / 2);
        assertThat(worst).as("the worst plan, above the best one known").isLessThan(0.05);
    }

    private void compare(long seed) {
        Work work = SmallWork.of(seed);
        int plan = (int) Search.best(work, PLACINGS).merit().end();
        long bound = AtLeast.of(work);
        if (bound == plan && seed >= ALWAYS_SOLVED) {
            proven++;
            optimal++;
            boundReached++;
            return;
        }
        ExactDay.Answer answer = ExactDay.before(work, plan);
        int best = answer.least().orElse(plan);
        assertThat(bound).as("seed %d: no day ends before its bound", seed).isLessThanOrEqualTo(best);
        worst = Math.max(worst, (double) plan / best - 1);
        if (answer.isProven()) {
            proven++;
            optimal += plan == best ? 1 : 0;
            boundReached += bound == best ? 1 : 0;
        }
    }
}
