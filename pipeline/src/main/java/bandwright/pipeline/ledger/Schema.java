package bandwright.pipeline.ledger;

import bandwright.pipeline.outbox.OutboxFault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * The ledger's tables and how an older ledger becomes one of today's: each version is one step of statements on the one
 * before, done in one transaction; before it, the file is copied aside.
 */
final class Schema {
    /** The first step makes version 1 of an empty file. Never change a step that a shop may have taken: add one. */
    static final List<String> STEPS = List.of(
            """
            CREATE TABLE runs (
              run TEXT PRIMARY KEY, day TEXT NOT NULL, number INTEGER NOT NULL, state TEXT NOT NULL);
            CREATE TABLE units (
              id TEXT PRIMARY KEY, run TEXT NOT NULL, day TEXT NOT NULL, site TEXT NOT NULL, order_no TEXT NOT NULL,
              stem TEXT NOT NULL, line TEXT NOT NULL, piece INTEGER NOT NULL, signature TEXT NOT NULL,
              blank TEXT NOT NULL, what TEXT NOT NULL, sheet TEXT NOT NULL, load INTEGER NOT NULL, content TEXT NOT NULL,
              remake_of TEXT, spoiled_on TEXT, spoiled_why TEXT);
            CREATE INDEX units_by_order ON units (order_no);
            CREATE INDEX units_by_stem ON units (stem);
            CREATE INDEX units_by_blank ON units (blank, day);
            CREATE INDEX units_by_run ON units (run);
            CREATE TABLE holds (
              run TEXT NOT NULL, site TEXT NOT NULL, order_no TEXT NOT NULL, line TEXT NOT NULL, origin TEXT NOT NULL,
              content TEXT NOT NULL, code TEXT NOT NULL, made INTEGER NOT NULL);
            CREATE INDEX holds_by_order ON holds (order_no);
            CREATE INDEX holds_by_run ON holds (run)""",
            // How each piece is pressed. Of the pieces before nobody knows it any more.
            """
            ALTER TABLE units ADD COLUMN source TEXT NOT NULL DEFAULT '';
            ALTER TABLE units ADD COLUMN heated_c REAL;
            ALTER TABLE units ADD COLUMN heated_s INTEGER;
            ALTER TABLE units ADD COLUMN pressure TEXT NOT NULL DEFAULT '';
            CREATE INDEX units_by_pressing
              ON units (blank, source, heated_c, heated_s, pressure, spoiled_why, run)""",
            """
            CREATE TABLE contents (digest TEXT NOT NULL, run TEXT NOT NULL, PRIMARY KEY (digest, run))""",
            // Which files of sheets were to go to the printer, and how far each came.
            """
            CREATE TABLE handovers (
              run TEXT NOT NULL, file TEXT NOT NULL, queue TEXT NOT NULL, state TEXT NOT NULL, job TEXT NOT NULL,
              PRIMARY KEY (run, file))""");

    private Schema() {}

    /**
     * Brings a ledger to the newest version.
     *
     * @param steps one for each version, the first makes version 1
     * @throws OutboxFault if a newer Bandwright wrote it
     */
    static void upgrade(Connection connection, Path file, List<String> steps) throws SQLException, IOException {
        int version = version(connection);
        if (version > steps.size()) {
            throw OutboxFault.of("ledger-newer", file, version, steps.size());
        }
        if (version == steps.size()) {
            return;
        }
        if (version > 0) {
            Path aside = file.resolveSibling(file.getFileName() + ".version-" + version);
            Files.copy(file, aside, StandardCopyOption.REPLACE_EXISTING);
        }
        Transaction.run(connection, database -> {
            try (Statement statement = database.createStatement()) {
                for (String step : steps.subList(version, steps.size())) {
                    for (String sql : step.split(";", -1)) {
                        statement.executeUpdate(sql);
                    }
                }
                statement.executeUpdate("PRAGMA user_version = " + steps.size());
            }
            return true;
        });
    }

    private static int version(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("PRAGMA user_version")) {
            return rows.getInt(1);
        }
    }
}
