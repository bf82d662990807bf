package bandwright.pipeline.watch;

/** A drop that could not be put away: open in another program, or the folder for it is none. Tried at every look. */
record Unplaced(Placing placing, String why) {}
