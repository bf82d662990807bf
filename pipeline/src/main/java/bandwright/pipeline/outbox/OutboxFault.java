package bandwright.pipeline.outbox;

import bandwright.rules.words.Words;

/** Why nothing was published, in one line, and what to do about it, in another. */
public final class OutboxFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String message;
    private final String cure;

    private OutboxFault(String message, String cure) {
        super(message);
        this.message = message;
        this.cure = cure;
    }

    /** The fault of that name in words.properties; message and cure may speak of the same things. */
    public static OutboxFault of(String name, Object... about) {
        return new OutboxFault(Words.say("fault." + name, about), Words.say("fault." + name + ".cure", about));
    }

    public static OutboxFault of(Throwable cause, String name, Object... about) {
        OutboxFault fault = of(name, about);
        fault.initCause(cause);
        return fault;
    }

    /** What is wrong, never null. */
    @Override
    public String getMessage() {
        return message;
    }

    public String cure() {
        return cure;
    }
}
