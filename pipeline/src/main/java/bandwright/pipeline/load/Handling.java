package bandwright.pipeline.load;

/**
 * What somebody does at a machine, in seconds from the start of the day's work.
 *
 * @param person counted from 1
 * @param load the number of the load
 */
public record Handling(int person, Kind kind, int load, int from, int to) {
    /** Pieces go in, are turned between two positions, or come out. */
    public enum Kind {
        LOAD,
        TURN,
        UNLOAD
    }
}
