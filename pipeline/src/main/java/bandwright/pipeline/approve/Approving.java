package bandwright.pipeline.approve;

import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.Split;
import bandwright.pipeline.rows.Row;
import bandwright.pipeline.size.Unit;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Lets through what nobody has to approve, and what the buyer has approved as it is printed now: a row of a site that
 * waits says 4KX7Q in its approved cell, and that is the code of its proof. Another code is that of another proof.
 */
public final class Approving {
    private Approving() {}

    /** Every row goes on whole or waits whole. */
    public static Approved each(Split<Unit> sized) {
        List<Unit> made = new ArrayList<>();
        List<Unit> waiting = new ArrayList<>();
        List<HeldRow> held = new ArrayList<>(sized.held());
        for (List<Unit> row : byRow(sized.made())) {
            Optional<ApproveReason> reason = whyNot(row);
            if (reason.isPresent()) {
                Unit first = row.get(0);
                held.add(new HeldRow(
                        first.matched().line().row(), first.matched().line().order(), row.size(), reason.get()));
                waiting.addAll(row);
            } else {
                made.addAll(row);
            }
        }
        return new Approved(new Split<>(made, held), waiting);
    }

    private static Optional<ApproveReason> whyNot(List<Unit> row) {
        Optional<String> given = row.get(0).matched().line().approved();
        if (given.isEmpty()) {
            return Optional.empty();
        }
        ProofCode code = ProofCode.of(row);
        return code.isMeantBy(given.get())
                ? Optional.empty()
                : Optional.of(new ApproveReason.WaitingForApproval(code.text(), given.get()));
    }

    private static List<List<Unit>> byRow(List<Unit> units) {
        IdentityHashMap<Row, List<Unit>> rows = new IdentityHashMap<>();
        List<List<Unit>> inOrder = new ArrayList<>();
        for (Unit unit : units) {
            rows.computeIfAbsent(unit.matched().line().row(), any -> {
                        List<Unit> row = new ArrayList<>();
                        inOrder.add(row);
                        return row;
                    })
                    .add(unit);
        }
        return inOrder;
    }
}
