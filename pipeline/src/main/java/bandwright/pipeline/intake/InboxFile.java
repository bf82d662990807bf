package bandwright.pipeline.intake;

import java.util.Optional;

/**
 * What became of one file, or of one sheet of it.
 *
 * @param sheet empty in CSV, or where the whole file could not be read
 * @param rows how many rows under the header were read
 * @param message why it is not read, with the cure; where it is read, what a person may not expect of it, mostly
 *     nothing
 */
public record InboxFile(String file, Optional<String> sheet, String site, int rows, State state, String message) {
    /** The words that run.json has for it. */
    public enum State {
        READ("read"),
        HIDDEN("hidden"),
        NOT_ORDERS("not orders"),
        UNREADABLE("unreadable");

        private final String word;

        State(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
