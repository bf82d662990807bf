package bandwright.pipeline.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Why a what-if is never taken from list scheduling alone. R. L. Graham's example of 1969, nine jobs on three machines:
 * with a fourth machine, with shorter jobs, with fewer of them to wait for, the list's day gets longer each time. The data
 * are from memory; the four ends are published, and come out here.
 */
class AnomalyTest {
    private static final List<Integer> TIMES = List.of(3, 2, 2, 2, 4, 4, 4, 4, 9);
    private static final Map<Integer, List<Integer>> AFTER =
            Map.of(9, List.of(1), 5, List.of(4), 6, List.of(4), 7, List.of(4), 8, List.of(4));

    @Test
    void moreAtHandMakesAListLonger() {
        assertThat(list(3, TIMES, AFTER)).isEqualTo(12);
        assertThat(list(4, TIMES, AFTER)).as("a machine more").isEqualTo(15);
        assertThat(list(3, TIMES.stream().map(time -> time - 1).toList(), AFTER))
                .as("each job shorter")
                .isEqualTo(13);
        Map<Integer, List<Integer>> fewer = new HashMap<>(AFTER);
        fewer.remove(5);
        fewer.remove(6);
        assertThat(list(3, TIMES, fewer)).as("less to wait for").isEqualTo(16);
    }

    /** Loads have an order too, so it could happen to us; a day keeps the better of two plans. */
    @Test
    void butNeverMakesADayLonger() {
        for (long seed = 100; seed < 140; seed++) {
            PressDay day = RandomDay.of(seed, 6, 3).plan();
            assertThat(day.whatIfs()).as("seed %d", seed).hasSizeGreaterThan(1);
            for (WhatIf whatIf : day.whatIfs()) {
                assertThat(whatIf.endSeconds())
                        .as("seed %d, %s", seed, whatIf)
                        .isPositive()
                        .isLessThanOrEqualTo(day.endSeconds());
            }
        }
    }

    /** Whenever a machine is free it takes the first job of the list that needn't wait. */
    private static int list(int machines, List<Integer> times, Map<Integer, List<Integer>> after) {
        int[] ends = new int[times.size() + 1];
        Arrays.fill(ends, Integer.MAX_VALUE);
        int[] free = new int[machines];
        int done = 0;
        for (int now = 0; done < times.size(); now++) {
            for (int machine = 0; machine < machines; machine++) {
                int job = free[machine] <= now ? next(now, ends, after) : 0;
                if (job > 0) {
                    ends[job] = now + times.get(job - 1);
                    free[machine] = ends[job];
                    done++;
                }
            }
        }
        return Arrays.stream(ends, 1, ends.length).max().orElse(0);
    }

    private static int next(int now, int[] ends, Map<Integer, List<Integer>> after) {
        for (int job = 1; job < ends.length; job++) {
            boolean isFree = after.getOrDefault(job, List.of()).stream().allMatch(before -> ends[before] <= now);
            if (ends[job] == Integer.MAX_VALUE && isFree) {
                return job;
            }
        }
        return 0;
    }
}
