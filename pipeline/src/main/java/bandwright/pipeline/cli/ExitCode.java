package bandwright.pipeline.cli;

/** What the command line ends with; scripts and the shop's own habits hang on these numbers. */
final class ExitCode {
    /** Everything asked is on sheets, or rightly skipped. */
    static final int DONE = 0;
    /** Nothing was published. */
    static final int NOTHING_PUBLISHED = 1;
    /** The command was not understood. */
    static final int WRONG_USAGE = 2;
    /** Finished, but something waits for a person. */
    static final int NEEDS_A_PERSON = 3;

    private ExitCode() {}
}
