package bandwright.pipeline.load;

import java.util.List;

/**
 * The plan of a day at the machines. Times are seconds from the start of the day's work.
 *
 * @param loads in the order in which they start
 * @param machines those that are used, in the order of the rulebook
 * @param hands what people do, in the order of time
 * @param atLeastSeconds no plan could have the last piece out before; 0 if there is none
 * @param whatIfs what one more machine, one more person, or confirmed settings would change
 */
public record PressDay(
        List<Load> loads, List<MachineDay> machines, List<Handling> hands, int atLeastSeconds, List<WhatIf> whatIfs) {
    /** Nothing to press. */
    public static final PressDay NONE = new PressDay(List.of(), List.of(), List.of(), 0, List.of());

    public PressDay {
        loads = List.copyOf(loads);
        machines = List.copyOf(machines);
        hands = List.copyOf(hands);
        whatIfs = List.copyOf(whatIfs);
    }

    /** When the last piece is out. */
    public int endSeconds() {
        return loads.stream().mapToInt(Load::endSeconds).max().orElse(0);
    }
}
