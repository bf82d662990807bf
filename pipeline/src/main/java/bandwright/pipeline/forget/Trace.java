package bandwright.pipeline.forget;

import java.nio.file.Path;

/** A place on the disk that holds the order, and what may become of it. */
public record Trace(Path place, Kind kind) {
    /** What it is; the last part of its key in words.properties. */
    public enum Kind {
        /** The folder of a run: slips, lists, labels, the page. */
        RUN("run", true),
        /** The same, but rows of other orders are held in it: held.xlsx stays, without this order. */
        RUN_WITH_HELD("run-with-held", true),
        /** An order file that went into a run. */
        DONE("done", true),
        /** A picture that the buyer sent. */
        PICTURE("picture", true),
        /** A copy of the ledger from before it was upgraded. */
        OLD_LEDGER("old-ledger", true),
        /** A file that no run has taken: other orders in it may not be made yet. */
        WAITING("waiting", false),
        /** A file that can't be looked into. */
        UNREAD("unread", false);

        private final String word;
        private final boolean mayGo;

        Kind(String word, boolean mayGo) {
            this.word = word;
            this.mayGo = mayGo;
        }

        public String word() {
            return word;
        }

        /** Whether it may be deleted without harm to other orders. */
        public boolean mayGo() {
            return mayGo;
        }
    }
}
