package bandwright.pipeline.ledger;

import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.outbox.OwnOnly;
import bandwright.pipeline.outbox.RunRecord;
import bandwright.pipeline.past.Memory;
import bandwright.pipeline.past.OrderKey;
import bandwright.pipeline.past.Past;
import bandwright.pipeline.past.PastHold;
import bandwright.pipeline.past.PastPiece;
import bandwright.pipeline.rows.PlainName;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * OUTBOX/ledger.db: every unit that was ever printed, and every row that was held.
 *
 * <p>A run and its entries appear together or not at all, wherever it is killed. The entries are written first, in one
 * transaction, as "making"; then the run's folder gets its name, which is the one moment at which the run begins to
 * exist; then the entries become "made". Whoever opens the ledger next finds entries that are still "making": if the
 * run's folder is there they are made, if it isn't they are removed, like what was written of the folder.
 */
public final class Ledger implements Memory, AutoCloseable {
    /** The file's name in the outbox. */
    public static final String FILE = "ledger.db";

    private static final String MAKING = "making";
    private static final String MADE = "made";

    private final Path file;
    private final List<String> steps;
    private Optional<Connection> connection = Optional.empty();

    private Ledger(Path file, List<String> steps) {
        this.file = file;
        this.steps = steps;
    }

    /**
     * The ledger of an outbox that this run has for itself; the file comes to be with the first entry.
     *
     * @throws OutboxFault if it is damaged, or written by a newer version
     */
    public static Ledger open(Path outbox) {
        return open(outbox, Schema.STEPS);
    }

    /** The same, only to look: another run may be writing it. */
    public static Ledger look(Path outbox) {
        return new Ledger(outbox.resolve(FILE), Schema.STEPS);
    }

    static Ledger open(Path outbox, List<String> steps) {
        Ledger ledger = new Ledger(outbox.resolve(FILE), steps);
        if (Files.exists(ledger.file)) {
            ledger.settle(run -> Files.isDirectory(outbox.resolve(run)));
        }
        return ledger;
    }

    private Connection connected() throws SQLException {
        if (connection.isPresent()) {
            return connection.get();
        }
        keepPrivate();
        Connection opened = DriverManager.getConnection("jdbc:sqlite:" + file);
        connection = Optional.of(opened);
        try (Statement statement = opened.createStatement()) {
            // A journal beside the file works on network drives too, where a shared-memory log does not.
            statement.execute("PRAGMA journal_mode = DELETE");
            // With FULL a power cut may bring the journal back, and with it undo what was entered before the rename.
            statement.execute("PRAGMA synchronous = EXTRA");
            statement.execute("PRAGMA secure_delete = ON"); // what is forgotten is overwritten
            Schema.upgrade(opened, file, steps);
        } catch (IOException e) {
            throw OutboxFault.of(e, "ledger-failed", file, String.valueOf(e.getMessage()));
        }
        return opened;
    }

    /** The database's own files beside it take their rights from it. */
    private void keepPrivate() {
        try {
            if (!Files.exists(file)) {
                Files.createFile(file, OwnOnly.file());
            }
        } catch (IOException e) {
            throw OutboxFault.of(e, "ledger-closed", file);
        }
    }

    /** Decides about the runs that were being made when the power went. */
    private void settle(Predicate<String> isThere) {
        asked(database -> {
            for (String run : texts(database, "SELECT run FROM runs WHERE state = ?", MAKING)) {
                if (isThere.test(run)) {
                    made(run);
                } else {
                    withdraw(run);
                }
            }
            handovers().forgetUnpublished();
            return database;
        });
    }

    @Override
    public Past past(Collection<OrderKey> orders, Map<String, LocalDate> countedOn, Collection<String> skus) {
        if (!Files.exists(file)) {
            return Past.NONE;
        }
        return asked(database -> {
            Set<OrderKey> keys = new LinkedHashSet<>(orders);
            Set<String> numbers = new TreeSet<>();
            keys.forEach(key -> numbers.add(key.order()));
            Map<OrderKey, List<PastPiece>> pieces = new HashMap<>();
            Map<OrderKey, List<PastHold>> holds = new HashMap<>();
            Set<String> ids = new HashSet<>();
            for (String number : numbers) {
                for (PastPiece piece : PastQuery.pieces(database, number)) {
                    pieces.computeIfAbsent(piece.order(), key -> new ArrayList<>())
                            .add(piece);
                }
                for (PastHold hold : PastQuery.holds(database, number)) {
                    holds.computeIfAbsent(hold.order(), key -> new ArrayList<>())
                            .add(hold);
                }
                ids.addAll(texts(database, "SELECT id FROM units WHERE stem = ?", PlainName.of(number)));
            }
            return new Past(pieces, holds, ids, taken(database, countedOn), ExperienceQuery.of(database, skus));
        });
    }

    private static Map<String, Integer> taken(Connection database, Map<String, LocalDate> countedOn)
            throws SQLException {
        Map<String, Integer> taken = new HashMap<>();
        try (PreparedStatement query =
                database.prepareStatement("SELECT COUNT(*) FROM units WHERE blank = ? AND day >= ?")) {
            for (Map.Entry<String, LocalDate> count : countedOn.entrySet()) {
                query.setString(1, count.getKey());
                query.setString(2, count.getValue().toString());
                try (ResultSet rows = query.executeQuery()) {
                    taken.put(count.getKey(), rows.getInt(1));
                }
            }
        }
        return taken;
    }

    /** The highest number of a run of that day; 0 if there was none. */
    public int highestRun(LocalDate day) {
        if (!Files.exists(file)) {
            return 0;
        }
        return asked(database -> {
            try (PreparedStatement query = database.prepareStatement("SELECT MAX(number) FROM runs WHERE day = ?")) {
                query.setString(1, day.toString());
                try (ResultSet rows = query.executeQuery()) {
                    return rows.getInt(1);
                }
            }
        });
    }

    /** Every piece of orders of that number, in the order in which they were made. */
    public List<PastPiece> list(String order) {
        return Files.exists(file) ? asked(database -> PastQuery.pieces(database, order)) : List.of();
    }

    /** The newest run that was made from a file of that content. */
    public Optional<String> findRunOf(String digest) {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        return asked(database -> texts(
                        database,
                        "SELECT run FROM contents JOIN runs USING (run) WHERE digest = ? ORDER BY day DESC, number DESC",
                        digest)
                .stream()
                .findFirst());
    }

    /** What was handed to the printer. */
    public Handovers handovers() {
        return new Handovers(this);
    }

    /** Whether anything was ever entered. */
    boolean isBegun() {
        return Files.exists(file);
    }

    /** How a run is entered while its folder gets its name. */
    public RunRecord entering(RunEntry entry) {
        String run = entry.run().toString();
        return new RunRecord() {
            @Override
            public void begin() {
                enter(entry);
            }

            @Override
            public void keep() {
                made(run);
            }

            @Override
            public void takeBack() {
                withdraw(run);
            }
        };
    }

    /** Writes what a run is about to publish, all of it or nothing. */
    private void enter(RunEntry entry) {
        wholly(database -> {
            EntryWriter.write(database, entry, MAKING);
            return true;
        });
    }

    /** The run's folder is there. */
    private void made(String run) {
        asked(database -> run(database, "UPDATE runs SET state = '" + MADE + "' WHERE run = ?", run));
    }

    /** The run's folder never came to be. */
    private void withdraw(String run) {
        wholly(database -> {
            run(database, "DELETE FROM units WHERE run = ?", run);
            run(database, "DELETE FROM holds WHERE run = ?", run);
            run(database, "DELETE FROM contents WHERE run = ?", run);
            run(database, "DELETE FROM runs WHERE run = ?", run);
            return true;
        });
    }

    /**
     * Marks units as ruined, all of them or none.
     *
     * @return the ids that no unit has, or whose unit is ruined already; empty if all are marked now
     */
    public List<String> spoil(Collection<String> ids, LocalDate day, String reason) {
        if (!Files.exists(file)) {
            return List.copyOf(ids);
        }
        List<String> unknown = new ArrayList<>();
        wholly(database -> {
            for (String id : ids) {
                String sql = "UPDATE units SET spoiled_on = ?, spoiled_why = ? WHERE id = ? AND spoiled_on IS NULL";
                if (run(database, sql, day.toString(), reason, id) == 0) {
                    unknown.add(id);
                }
            }
            return unknown.isEmpty();
        });
        return List.copyOf(unknown);
    }

    /** Forgets the buyers' words of pieces made before a day; what was made, and how often, stays. */
    public void purge(LocalDate before) {
        if (Files.exists(file)) {
            asked(database ->
                    run(database, "UPDATE units SET what = '' WHERE day < ? AND what <> ''", before.toString()));
        }
    }

    /** The runs that made or held something of orders of that number. */
    public Set<String> runsOf(String order) {
        if (!Files.exists(file)) {
            return Set.of();
        }
        return asked(database -> {
            Set<String> runs =
                    new TreeSet<>(texts(database, "SELECT DISTINCT run FROM units WHERE order_no = ?", order));
            runs.addAll(texts(database, "SELECT DISTINCT run FROM holds WHERE order_no = ?", order));
            return runs;
        });
    }

    /**
     * Forgets the words of an order's buyer and what was said of its ruined pieces; what was made, and how often, stays.
     *
     * @return how many pieces had such words
     */
    public int forget(String order) {
        if (!Files.exists(file)) {
            return 0;
        }
        return asked(database -> {
            String spoiled = "UPDATE units SET spoiled_why = '' WHERE order_no = ? AND spoiled_why IS NOT NULL";
            run(database, spoiled, order);
            return run(database, "UPDATE units SET what = '' WHERE order_no = ? AND what <> ''", order);
        });
    }

    private static List<String> texts(Connection database, String sql, String about) throws SQLException {
        List<String> texts = new ArrayList<>();
        try (PreparedStatement query = database.prepareStatement(sql)) {
            query.setString(1, about);
            try (ResultSet row = query.executeQuery()) {
                while (row.next()) {
                    texts.add(row.getString(1));
                }
            }
        }
        return texts;
    }

    static int run(Connection database, String sql, String... values) throws SQLException {
        try (PreparedStatement statement = database.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setString(i + 1, values[i]);
            }
            return statement.executeUpdate();
        }
    }

    /** Something that is asked of the database. */
    @FunctionalInterface
    interface Question<T> {
        T of(Connection database) throws SQLException;
    }

    <T> T asked(Question<T> question) {
        try {
            return question.of(connected());
        } catch (SQLException e) {
            throw LedgerFaults.of(e, file);
        }
    }

    /** Changes the ledger by all that is done or by nothing: where the answer is no, or something fails. */
    void wholly(Transaction.Change change) {
        asked(database -> {
            Transaction.run(database, change);
            return database;
        });
    }

    @Override
    public void close() {
        try {
            if (connection.isPresent()) {
                connection.get().close();
            }
        } catch (SQLException e) {
            throw LedgerFaults.of(e, file);
        }
    }
}
