package fairflame.store;

import fairflame.Refusal;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Tells what a user can mend, as a refusal that names the file, from a bug of the program. */
final class Faults {
    private final Path file;

    Faults(Path file) {
        this.file = file;
    }

    /** What to throw instead of a fault of the database or one of its libraries. */
    RuntimeException told(Throwable fault) {
        return code(fault)
                .flatMap(this::refusal)
                .map(RuntimeException.class::cast)
                .orElseGet(() -> new StoreException("database " + file + ": " + fault.getMessage(), fault));
    }

    /** As {@link #told}, for a file that was not looked over yet: whatever else SQLite says of it means damage. */
    RuntimeException toldAtOpening(SQLException fault) {
        return code(fault).flatMap(this::refusal).orElseGet(() -> damaged(String.valueOf(fault.getMessage())));
    }

    /** The result code of SQLite, wherever it stands in the chain of causes. */
    private static Optional<SQLiteErrorCode> code(Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException sqlite) {
                return Optional.of(sqlite.getResultCode());
            }
        }
        return Optional.empty();
    }

    private Optional<Refusal> refusal(SQLiteErrorCode code) {
        // Extended codes carry the primary code in their low byte: https://sqlite.org/rescode.html
        return Optional.ofNullable(
                switch (code.code & 0xFF) {
                    case 5, 6, 15 ->
                        refused("a database that is not in use by another program; close it and try again");
                    case 8 -> refused("a database that this user may write to, on a disk that is not read-only");
                    case 10 -> refused("a database on a disk without faults (" + code.name() + ")");
                    case 11 -> damaged(code.name());
                    case 13 -> refused("a database on a disk with room left; nothing of this step was stored");
                    case 14 -> refused("a database file that can be opened, in a folder that can be written to");
                    case 26 -> refused("a Fairflame database; this file is no database");
                    default -> null;
                });
    }

    Refusal damaged(String how) {
        return refused("an undamaged database; put a backup in its place (" + how + ")");
    }

    Refusal refused(String allowed) {
        return Refusal.unusable("database", file, allowed);
    }
}
