package bandwright.pipeline.owed;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.match.MatchedLine;
import java.util.ArrayList;
import java.util.List;

/** The rows of one order in this inbox, by what earlier stages made of them. */
final class OrderRows {
    /** Of files as selling sites write them. */
    final List<MatchedLine> stated = new ArrayList<>();

    /** Of held files: they add, and change nothing else. */
    final List<MatchedLine> added = new ArrayList<>();

    final List<HeldRow> held = new ArrayList<>();
    final List<SkippedRow> skipped = new ArrayList<>();
}
