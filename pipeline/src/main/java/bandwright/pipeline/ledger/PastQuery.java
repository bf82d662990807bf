package bandwright.pipeline.ledger;

import bandwright.pipeline.past.OrderKey;
import bandwright.pipeline.past.PastHold;
import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.past.Signature;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the ledger remembers of the orders of one number, in the order in which it was entered. */
final class PastQuery {
    private PastQuery() {}

    static List<PastPiece> pieces(Connection database, String order) throws SQLException {
        String sql =
                "SELECT id, run, site, order_no, line, piece, signature, blank, what, sheet, load, content, source,"
                        + " heated_c, heated_s, pressure, remake_of, spoiled_on, spoiled_why FROM units WHERE order_no = ? ORDER BY rowid";
        List<PastPiece> pieces = new ArrayList<>();
        try (PreparedStatement query = database.prepareStatement(sql)) {
            query.setString(1, order);
            try (ResultSet row = query.executeQuery()) {
                while (row.next()) {
                    pieces.add(piece(row));
                }
            }
        }
        return pieces;
    }

    private static PastPiece piece(ResultSet row) throws SQLException {
        Optional<PastPiece.Spoiled> spoiled = row.getString("spoiled_on") == null
                ? Optional.empty()
                : Optional.of(new PastPiece.Spoiled(
                        LocalDate.parse(row.getString("spoiled_on")), row.getString("spoiled_why")));
        return new PastPiece(
                row.getString("id"),
                row.getString("run"),
                new OrderKey(row.getString("site"), row.getString("order_no")),
                row.getString("line"),
                row.getInt("piece"),
                new Signature(row.getString("signature")),
                row.getString("blank"),
                row.getString("what"),
                row.getString("sheet"),
                row.getInt("load"),
                row.getString("content"),
                row.getString("source"),
                ExperienceQuery.heating(row),
                Optional.ofNullable(row.getString("remake_of")),
                spoiled);
    }

    static List<PastHold> holds(Connection database, String order) throws SQLException {
        String sql =
                "SELECT site, order_no, line, origin, content, code, made FROM holds WHERE order_no = ? ORDER BY rowid";
        List<PastHold> holds = new ArrayList<>();
        try (PreparedStatement query = database.prepareStatement(sql)) {
            query.setString(1, order);
            try (ResultSet row = query.executeQuery()) {
                while (row.next()) {
                    holds.add(new PastHold(
                            new OrderKey(row.getString(1), row.getString(2)),
                            row.getString(3),
                            row.getString(4),
                            row.getString(5),
                            row.getString(6),
                            row.getInt(7)));
                }
            }
        }
        return holds;
    }
}
