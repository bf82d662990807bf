package bandwright.pipeline.intake;

/** The inbox itself can't be used: what is wrong with it, and what to do. One line each. */
public final class InboxFault extends Exception {
    private static final long serialVersionUID = 1L;

    private final String message;
    private final String cure;

    public InboxFault(String message, String cure) {
        super(message);
        this.message = message;
        this.cure = cure;
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
