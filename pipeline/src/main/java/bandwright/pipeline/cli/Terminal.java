package bandwright.pipeline.cli;

import java.io.PrintWriter;

/**
 * What is said while a command works. On a terminal one line that is written over shows how far it is; in a pipe there
 * is none of that. Control characters of strangers' texts never reach the terminal.
 */
final class Terminal {
    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean isLive;
    private int shown;

    Terminal(PrintWriter out, PrintWriter err, boolean isLive) {
        this.out = out;
        this.err = err;
        this.isLive = isLive;
    }

    /** A line of the answer. */
    void answer(String line) {
        clear();
        out.println(harmless(line));
        out.flush();
    }

    /** A line about something that a person must mend. */
    void complain(String line) {
        clear();
        err.println(harmless(line));
        err.flush();
    }

    /** Where the work is, on a terminal only. */
    void progress(String line) {
        if (!isLive) {
            return;
        }
        clear();
        String text = harmless(line);
        err.print(text);
        err.flush();
        shown = text.length();
    }

    boolean isLive() {
        return isLive;
    }

    private void clear() {
        if (shown > 0) {
            err.print("\r" + " ".repeat(shown) + "\r");
            err.flush();
            shown = 0;
        }
    }

    /** Control characters, line ends and direction marks become a visible space, so that no text can write over another. */
    static String harmless(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            int type = Character.getType(c);
            boolean isUnsafe = type == Character.CONTROL
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR
                    || type == Character.FORMAT
                    || type == Character.SURROGATE;
            safe.appendCodePoint(isUnsafe ? ' ' : c);
        });
        return safe.toString();
    }
}
