package bandwright.pipeline.outbox;

/** What is written down of a run beside its folder, so that both begin to exist together or not at all. */
public interface RunRecord {
    /** Before the folder gets its name; what is written may still be taken back. */
    void begin();

    /** The folder is there. */
    void keep();

    /** The folder will not be there. */
    void takeBack();
}
