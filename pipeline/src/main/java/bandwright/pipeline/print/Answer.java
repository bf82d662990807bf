package bandwright.pipeline.print;

/**
 * What the system said when it was given a job.
 *
 * @param said the job's name where it was taken, else the first line of what was said; may be empty
 */
record Answer(Kind kind, String said) {
    enum Kind {
        /** It is in the queue. */
        TAKEN,
        /** It is not. */
        REFUSED,
        /** No answer in time: it may be in the queue or not. */
        UNCLEAR,
        /** There is nothing to ask. */
        NO_LP
    }
}
