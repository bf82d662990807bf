package bandwright.pipeline.ledger;

import bandwright.pipeline.past.Heating;
import bandwright.pipeline.past.PastHold;
import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.rows.PlainName;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Puts a run's entry into the tables. */
final class EntryWriter {
    private EntryWriter() {}

    static void write(Connection database, RunEntry entry, String state) throws SQLException {
        insert(
                database,
                "INSERT INTO runs (run, day, number, state) VALUES (?, ?, ?, ?)",
                entry.run().toString(),
                entry.run().date().toString(),
                entry.run().number(),
                state);
        contents(database, entry);
        String unit =
                "INSERT INTO units (id, run, day, site, order_no, stem, line, piece, signature, blank, what, sheet,"
                        + " load, content, source, pressure, remake_of, heated_c, heated_s)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
        try (PreparedStatement insert = database.prepareStatement(unit)) {
            for (PastPiece piece : entry.pieces()) {
                put(
                        insert,
                        piece.id(),
                        entry.run().toString(),
                        entry.run().date().toString(),
                        piece.order().site(),
                        piece.order().order(),
                        PlainName.of(piece.order().order()),
                        piece.line(),
                        piece.piece(),
                        piece.signature().digest(),
                        piece.blank(),
                        piece.what(),
                        piece.sheet(),
                        piece.load(),
                        piece.content(),
                        piece.source(),
                        piece.heating().map(Heating::pressure).orElse(""));
                insert.setString(17, piece.remakeOf().orElse(null));
                insert.setObject(
                        18,
                        piece.heating()
                                .map(heat -> heat.temperature().celsius())
                                .orElse(null));
                insert.setObject(19, piece.heating().map(Heating::seconds).orElse(null));
                insert.executeUpdate();
            }
        }
        String hold = "INSERT INTO holds (run, site, order_no, line, origin, content, code, made)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)";
        try (PreparedStatement insert = database.prepareStatement(hold)) {
            for (PastHold held : entry.holds()) {
                put(
                        insert,
                        entry.run().toString(),
                        held.order().site(),
                        held.order().order(),
                        held.line(),
                        held.from(),
                        held.content(),
                        held.code(),
                        held.made());
                insert.executeUpdate();
            }
        }
    }

    private static void contents(Connection database, RunEntry entry) throws SQLException {
        for (String digest : entry.contents()) {
            insert(
                    database,
                    "INSERT OR IGNORE INTO contents (digest, run) VALUES (?, ?)",
                    digest,
                    entry.run().toString());
        }
    }

    private static void insert(Connection database, String sql, Object... values) throws SQLException {
        try (PreparedStatement insert = database.prepareStatement(sql)) {
            put(insert, values);
            insert.executeUpdate();
        }
    }

    private static void put(PreparedStatement insert, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            insert.setObject(i + 1, values[i]);
        }
    }
}
