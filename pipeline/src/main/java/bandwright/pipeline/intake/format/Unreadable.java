package bandwright.pipeline.intake.format;

import bandwright.rules.words.Words;

/** An order file that can't be read: why, and what to do about it, in one plain line each. */
public final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final String cure;

    private Unreadable(String message, String cure) {
        super(message, null, false, false); // no stack: it is an answer, not a mistake of ours
        this.cure = cure;
    }

    /** The fault of that name in words.properties. */
    public static Unreadable of(String name, Object... about) {
        return new Unreadable(Words.say("fault." + name, about), Words.say("fault." + name + ".cure", about));
    }

    public String cure() {
        return cure;
    }
}
