package bandwright.pipeline.tile;

import bandwright.pipeline.size.Unit;

/**
 * A unit that waits for its place.
 *
 * @param rank its place in load order over the whole run, from 0
 */
record Waiting(Unit unit, int load, int rank) {}
