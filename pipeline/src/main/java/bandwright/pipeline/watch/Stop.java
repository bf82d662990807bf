package bandwright.pipeline.watch;

import bandwright.pipeline.outbox.OutboxFault;
import bandwright.rules.RulebookFaults;
import bandwright.rules.words.Words;
import java.util.List;

/** Why nothing can be taken just now: what is wrong, what a person can do about it; looked at again and again. */
final class Stop extends Exception {
    private static final long serialVersionUID = 1L;

    private final String message;
    private final String cure;
    private final List<String> lines;

    private Stop(String message, String cure, List<String> lines) {
        super(message, null, false, false); // no stack: it is an answer, not a mistake of ours
        this.message = message;
        this.cure = cure;
        this.lines = List.copyOf(lines);
    }

    static Stop of(String name, Object... about) {
        return new Stop(
                Words.say("watch.stop." + name, about), Words.say("watch.stop." + name + ".cure", about), List.of());
    }

    static Stop of(OutboxFault fault) {
        return new Stop(fault.getMessage(), fault.cure(), List.of());
    }

    static Stop of(RulebookFaults faults) {
        return new Stop(
                Words.say("watch.stop.rulebook", faults.faults().size()),
                Words.say("watch.stop.rulebook.cure"),
                faults.faults().stream().map(fault -> fault.line()).toList());
    }

    /** Never null. */
    @Override
    public String getMessage() {
        return message;
    }

    String cure() {
        return cure;
    }

    /** One a fault of the rulebook. */
    List<String> lines() {
        return lines;
    }

    boolean isLike(Stop other) {
        return message.equals(other.message) && lines.equals(other.lines);
    }
}
