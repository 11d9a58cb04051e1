package fairflame.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.UUID;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Copies of the database: one sound file each, or none. */
public final class Backup {
    private static final Connector CONNECTOR = Connector.waiting(Duration.ofSeconds(5));

    private Backup() {}

    /** Reads a backup through and refuses one that could not be put to use. */
    public static void check(Path copy) {
        checked(copy, connection -> copy);
    }

    /**
     * Puts a backup, read through before, in the place of a database that is gone.
     *
     * @param file where no database stands any more
     */
    public static void restore(Path copy, Path file) {
        checked(copy, connection -> take(connection, file));
    }

    private static void checked(Path copy, Step step) {
        var faults = new Faults(copy);
        if (!Files.isRegularFile(copy)) {
            throw faults.refused("an existing backup file");
        }
        try (var connection = CONNECTOR.connect(copy)) {
            new Opening(copy, CONNECTOR, Migrations.shipped()).version(connection);
            refuseUnsound(connection, faults);
            step.take(connection);
        } catch (SQLException e) {
            throw faults.told(e);
        }
    }

    private static void refuseUnsound(Connection connection, Faults faults) throws SQLException {
        var found = Inspection.faults(connection);
        if (!found.isEmpty()) {
            throw faults.refused("a sound database; found: " + found.get(0));
        }
    }

    /** Copies under a passing name with SQLite's online backup, looks the copy over, then gives it its name. */
    static Path take(Connection source, Path copy) {
        var faults = new Faults(copy);
        refuseTaken(copy, faults);
        var fresh = Opening.beside(copy, "." + UUID.randomUUID() + ".new");
        try {
            copy(source, fresh);
            try (var connection = CONNECTOR.connect(fresh)) {
                // One file that stands alone: no log beside it.
                Opening.text(connection, "pragma journal_mode = delete");
                refuseUnsound(connection, faults);
            }
            Files.move(fresh, copy);
        } catch (SQLException e) {
            throw faults.told(e);
        } catch (FileAlreadyExistsException e) {
            throw faults.refused("a file that does not exist yet");
        } catch (IOException e) {
            throw faults.refused("a place that can be written to (" + e.getMessage() + ")");
        } finally {
            Opening.deleteAll(fresh);
        }
        return copy;
    }

    private static void copy(Connection source, Path fresh) throws SQLException {
        var database = source.unwrap(SQLiteConnection.class).getDatabase();
        var code = database.backup("main", fresh.toAbsolutePath().toString(), (left, all) -> {});
        if (code != SQLiteErrorCode.SQLITE_OK.code) {
            throw new SQLiteException("online backup", SQLiteErrorCode.getErrorCode(code));
        }
    }

    private static void refuseTaken(Path copy, Faults faults) {
        var parent = copy.toAbsolutePath().getParent();
        if (parent == null || !Files.isDirectory(parent)) {
            throw faults.refused("a file in a folder that exists");
        }
        for (var ending : Opening.ENDINGS) {
            var taken = Opening.beside(copy, ending);
            if (Files.exists(taken)) {
                throw faults.refused("a file that does not exist yet; " + taken.getFileName() + " is in the way");
            }
        }
    }

    /** What is done with a backup that was found sound. */
    private interface Step {
        Path take(Connection connection) throws SQLException;
    }
}
