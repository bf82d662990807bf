package bandwright.rules;

import bandwright.rules.table.Fault;
import bandwright.rules.words.Words;
import java.util.List;

/** The tables can't be used as they are: everything that is wrong with them, by table, row and column. */
public final class RulebookFaults extends Exception {
    private static final long serialVersionUID = 1;
    private final transient List<Fault> faults;

    RulebookFaults(List<Fault> faults) {
        super(Words.say("rules.faults", faults.size()));
        this.faults = List.copyOf(faults);
    }

    public List<Fault> faults() {
        return faults;
    }
}
