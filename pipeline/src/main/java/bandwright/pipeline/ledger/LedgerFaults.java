package bandwright.pipeline.ledger;

import bandwright.pipeline.outbox.OutboxFault;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.regex.Pattern;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What a person should hear when the ledger can't be used: damaged, the disk full or closed to writing, or else. */
final class LedgerFaults {
    /** [SQLITE_IOERR_FSYNC], which the driver puts in front of what SQLite says. */
    private static final Pattern CODE = Pattern.compile("^\\[SQLITE_\\w+]\\s*");

    private LedgerFaults() {}

    static OutboxFault of(SQLException failure, Path file) {
        String line = String.valueOf(failure.getMessage()).lines().findFirst().orElse("");
        String said = CODE.matcher(line).replaceFirst("");
        if (!(failure instanceof SQLiteException sqlite)) {
            return OutboxFault.of(failure, "ledger-failed", file, said);
        }
        // An extended code's low byte is the code itself (SQLite, "Result and Error Codes").
        SQLiteErrorCode code = SQLiteErrorCode.getErrorCode(sqlite.getResultCode().code & 0xFF);
        return switch (code) {
            case SQLITE_CORRUPT, SQLITE_NOTADB -> OutboxFault.of(failure, "ledger-damaged", file);
            case SQLITE_FULL -> OutboxFault.of(failure, "disk-full", file);
            case SQLITE_READONLY, SQLITE_CANTOPEN, SQLITE_PERM -> OutboxFault.of(failure, "ledger-closed", file);
            default -> OutboxFault.of(failure, "ledger-failed", file, said);
        };
    }
}
