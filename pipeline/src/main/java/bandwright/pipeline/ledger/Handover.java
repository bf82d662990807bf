package bandwright.pipeline.ledger;

/**
 * A file of sheets that was to go to the printer.
 *
 * @param file in the run's folder: sheets/letter-01.pdf
 * @param queue empty = the system's default
 */
public record Handover(String run, String file, String queue, State state) {
    /** How far it came. Only what is waiting may ever be sent. */
    public enum State {
        /** To be sent as soon as its run is published. */
        WAITING,
        /** Given to the system, whose answer was not heard yet. */
        SENDING,
        /** The system took it. */
        SENT,
        /** Not taken, or nobody knows; a person was told. */
        TOLD
    }
}
