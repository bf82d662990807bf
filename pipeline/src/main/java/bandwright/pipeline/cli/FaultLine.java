package bandwright.pipeline.cli;

import bandwright.rules.table.Fault;
import bandwright.rules.table.Place;
import bandwright.rules.words.Words;

/** A fault of the rulebook as one line: where, what, what to do. */
final class FaultLine {
    private FaultLine() {}

    static String of(Fault fault) {
        Place place = fault.place();
        StringBuilder where = new StringBuilder(place.file());
        if (place.row() > 0) {
            where.append(Words.say("cli.at-row", place.row()));
        }
        if (!place.column().isEmpty()) {
            where.append(Words.say("cli.at-column", place.column()));
        }
        return where + ": " + fault.message() + " " + fault.cure();
    }
}
