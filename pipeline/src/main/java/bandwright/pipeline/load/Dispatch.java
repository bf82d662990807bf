package bandwright.pipeline.load;

import java.util.Comparator;
import java.util.stream.IntStream;

/** Ways to choose which load gets its time next: days that are good to begin with. */
enum Dispatch {
    /** The most urgent, whatever it has to wait for. */
    AS_LISTED,
    /** Plain list scheduling: what can start first, of those the most urgent. */
    AS_THEY_CAN_START,
    /** What can start first, of those what a machine is set for. */
    AS_MACHINES_ARE_SET,
    /** What can start first, of those what has the most work to come on its machines. */
    MOST_WORK_LEFT,
    /** All of the machines that have the most to do, then those that have less. */
    BUSIEST_FIRST;

    /** The chains in the order in which their loads get their times, each as often as it has loads. */
    int[] order(Work work, int[] machines) {
        Timetable day = new Timetable(work, machines);
        long[] starts = new long[work.chains().size()];
        int[] order = new int[work.loads()];
        Comparator<Integer> turn = turn(work, day, starts);
        for (int i = 0; i < order.length; i++) {
            for (int chain = 0; chain < starts.length; chain++) {
                starts[chain] = day.isDone(chain) ? Long.MAX_VALUE : day.earliest(chain);
            }
            order[i] = IntStream.range(0, starts.length)
                    .filter(chain -> starts[chain] < Long.MAX_VALUE)
                    .boxed()
                    .min(turn)
                    .orElseThrow();
            day.place(order[i]);
        }
        return order;
    }

    private Comparator<Integer> turn(Work work, Timetable day, long[] starts) {
        Comparator<Integer> urgent =
                Comparator.comparingInt(chain -> day.next(chain).turn());
        Comparator<Integer> soonest = Comparator.comparingLong(chain -> starts[chain]);
        Comparator<Integer> set = Comparator.comparing(chain -> !day.isSet(chain));
        return switch (this) {
            case AS_LISTED -> urgent;
            case AS_THEY_CAN_START -> soonest.thenComparing(urgent);
            case AS_MACHINES_ARE_SET -> soonest.thenComparing(set).thenComparing(urgent);
            case MOST_WORK_LEFT ->
                soonest.thenComparingLong(chain -> -day.workLeft(chain))
                        .thenComparing(set)
                        .thenComparing(urgent);
            case BUSIEST_FIRST -> {
                Comparator<Integer> busiest = Comparator.comparingLong(chain -> -work.workOf(chain));
                yield busiest.thenComparing(urgent);
            }
        };
    }
}
