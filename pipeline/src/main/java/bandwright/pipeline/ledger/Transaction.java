package bandwright.pipeline.ledger;

import java.sql.Connection;
import java.sql.SQLException;

/**
 * One change of the ledger: all of it or nothing. When the disk fails, SQLite may have undone the change already and
 * undoing it again fails, too: the first failure is the one that a person should hear of.
 */
final class Transaction {
    private Transaction() {}

    /** What is to be changed; no = nothing. */
    @FunctionalInterface
    interface Change {
        boolean of(Connection database) throws SQLException;
    }

    static void run(Connection database, Change change) throws SQLException {
        database.setAutoCommit(false);
        try {
            if (change.of(database)) {
                database.commit();
            } else {
                database.rollback();
            }
            database.setAutoCommit(true);
        } catch (SQLException | RuntimeException e) {
            undo(database, e);
            throw e;
        }
    }

    private static void undo(Connection database, Exception first) {
        try {
            database.rollback();
            database.setAutoCommit(true);
        } catch (SQLException e) {
            first.addSuppressed(e);
        }
    }
}
