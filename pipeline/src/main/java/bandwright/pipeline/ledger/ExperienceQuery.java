package bandwright.pipeline.ledger;

import bandwright.pipeline.past.Experience;
import bandwright.pipeline.past.Heating;
import bandwright.rules.units.Temperature;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Counts what was made of some blanks in published runs. An index holds all that it asks, so no piece is read itself. */
final class ExperienceQuery {
    static final String SQL =
            "SELECT source, heated_c, heated_s, pressure, spoiled_why, COUNT(*) FROM units WHERE blank = ?"
                    + " AND run NOT IN (SELECT run FROM runs WHERE state <> 'made')"
                    + " GROUP BY source, heated_c, heated_s, pressure, spoiled_why"
                    + " ORDER BY source, heated_c, heated_s, pressure, spoiled_why";

    private ExperienceQuery() {}

    static Experience of(Connection database, Collection<String> skus) throws SQLException {
        List<Experience.Alike> made = new ArrayList<>();
        try (PreparedStatement query = database.prepareStatement(SQL)) {
            for (String sku : skus) {
                query.setString(1, sku);
                try (ResultSet row = query.executeQuery()) {
                    while (row.next()) {
                        made.add(new Experience.Alike(
                                sku,
                                row.getString("source"),
                                heating(row),
                                Optional.ofNullable(row.getString("spoiled_why")),
                                row.getInt(6)));
                    }
                }
            }
        }
        return new Experience(made);
    }

    /** How a unit was pressed, where the ledger knows it. */
    static Optional<Heating> heating(ResultSet row) throws SQLException {
        double celsius = row.getDouble("heated_c");
        if (row.wasNull()) {
            return Optional.empty();
        }
        return Optional.of(
                new Heating(Temperature.celsius(celsius), row.getInt("heated_s"), row.getString("pressure")));
    }
}
