package bandwright.pipeline.ledger;

import bandwright.pipeline.RunId;
import bandwright.pipeline.ledger.Handover.State;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the ledger knows of sheets on their way to the printer, so that none is ever sent twice.
 *
 * <p>Each file is entered as waiting before its run is published, becomes sending before the system is asked, and sent
 * once the system has taken it. Whoever finds one waiting or sending later knows that the program was stopped in
 * between: it is told to a person and never sent again.
 */
public final class Handovers {
    private final Ledger ledger;

    Handovers(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Enters what a run that is about to be published will hand over. */
    public void promise(RunId run, List<Handover> files) {
        ledger.wholly(database -> {
            // Left by a try that was never published: its number is free again.
            Ledger.run(
                    database, "DELETE FROM handovers WHERE run = ? AND state = ?", run.toString(), word(State.WAITING));
            for (Handover file : files) {
                Ledger.run(
                        database,
                        "INSERT INTO handovers (run, file, queue, state, job) VALUES (?, ?, ?, ?, '')",
                        run.toString(),
                        file.file(),
                        file.queue(),
                        word(file.state()));
            }
            return true;
        });
    }

    /** Whether this file may be sent now: it was promised and nobody began to send it. Asking takes it. */
    public boolean begin(RunId run, String file) {
        String sql = "UPDATE handovers SET state = ? WHERE run = ? AND file = ? AND state = ?";
        return ledger.asked(database ->
                        Ledger.run(database, sql, word(State.SENDING), run.toString(), file, word(State.WAITING)))
                == 1;
    }

    /** The system took it, as that job. */
    public void sent(RunId run, String file, String job) {
        String sql = "UPDATE handovers SET state = ?, job = ? WHERE run = ? AND file = ?";
        ledger.asked(database -> Ledger.run(database, sql, word(State.SENT), job, run.toString(), file));
    }

    /** A person was told of what was not sent for certain, and looks after it. */
    public void told(String run, String file) {
        String sql = "UPDATE handovers SET state = ? WHERE run = ? AND file = ? AND state <> ?";
        ledger.asked(database -> Ledger.run(database, sql, word(State.TOLD), run, file, word(State.SENT)));
    }

    /** What stopped on its way and nobody was told of, the oldest first. */
    public List<Handover> left() {
        return ledger.isBegun() ? ledger.asked(Handovers::left) : List.of();
    }

    private static List<Handover> left(Connection database) throws SQLException {
        String sql = "SELECT run, file, queue, handovers.state FROM handovers JOIN runs USING (run)"
                + " WHERE handovers.state IN (?, ?)"
                + " ORDER BY day, number, handovers.rowid";
        List<Handover> left = new ArrayList<>();
        try (PreparedStatement query = database.prepareStatement(sql)) {
            query.setString(1, word(State.WAITING));
            query.setString(2, word(State.SENDING));
            try (ResultSet row = query.executeQuery()) {
                while (row.next()) {
                    State state = State.valueOf(row.getString(4).toUpperCase(Locale.ROOT));
                    left.add(new Handover(row.getString(1), row.getString(2), row.getString(3), state));
                }
            }
        }
        return left;
    }

    /** What was promised by a run that never came to be. */
    void forgetUnpublished() {
        ledger.asked(database -> Ledger.run(database, "DELETE FROM handovers WHERE run NOT IN (SELECT run FROM runs)"));
    }

    private static String word(State state) {
        return state.name().toLowerCase(Locale.ROOT);
    }
}
