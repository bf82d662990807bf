package bandwright.pipeline.load;

import bandwright.rules.heat.HeatSource;

/**
 * One machine's day, in seconds from the start of the day's work.
 *
 * @param machine which of the source's machines, from 1
 * @param on when it is switched on, so that it is warm for its first load
 * @param off when its last load is out
 */
public record MachineDay(HeatSource source, int machine, int on, int off) {}
